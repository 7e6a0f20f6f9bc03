import { CAUTIONS } from "../sheets/safety";

/** Safety notes, always at the bottom of the pane. */
export const Cautions = () => (
  <footer class="cautions">
    <h2>Before anyone climbs</h2>
    <ul>
      {CAUTIONS.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  </footer>
);
