import type { ComponentChildren } from "preact";
import { HELP_POLICY } from "./contentSecurityPolicy";
import { CAUTIONS } from "../sheets/safety";

interface Props {
  readonly title: string;
  readonly summary: string;
  readonly children: ComponentChildren;
}

/** The frame of every help page: head, title, and safety notes at the bottom. */
export const Page = ({ title, summary, children }: Props) => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta httpEquiv="Content-Security-Policy" content={HELP_POLICY} />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{`${title}: Gablewright help`}</title>
      <meta name="description" content={summary} />
      <link rel="stylesheet" href="../help.css" />
      <link rel="icon" href="../assets/icon-32.png" />
      <script src="../help.js" defer />
    </head>
    <body>
      <main>
        <h1>{title}</h1>
        <p>{summary}</p>
        {children}
      </main>
      <footer>
        {CAUTIONS.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
      </footer>
    </body>
  </html>
);
