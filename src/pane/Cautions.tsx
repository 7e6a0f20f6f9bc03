import { CAUTIONS } from "../sheets/safety";

/** The usual cautions, always in view at the pane's foot. */
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
