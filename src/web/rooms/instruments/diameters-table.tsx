import { numberInWords } from "../../parts/figures-in-words.ts";
import { BasisView } from "../case/ledger/basis-view.tsx";
import type { Measures } from "./measures-of.ts";

/** Every diameter with what the tolerance allows, and what the numbers rest on; folded until it is asked for. */
export const DiametersTable = ({ output }: { readonly output: Measures }) => (
  <details className="cabinet-diameters">
    <summary>Diameters along it, each ± {numberInWords(output.toleranceMm, 2)} mm by the standard's tolerance</summary>
    <table>
      <caption className="unseen">Diameters from the tip</caption>
      <thead>
        <tr>
          <th scope="col">From the tip, mm</th>
          <th scope="col">Diameter, mm</th>
          <th scope="col">Least</th>
          <th scope="col">Largest</th>
        </tr>
      </thead>
      <tbody>
        {output.profile.map(({ atMm, diameterMm, low, high }) => (
          <tr key={atMm}>
            <th scope="row">{numberInWords(atMm, 1)}</th>
            <td>{numberInWords(diameterMm, 3)}</td>
            <td>{numberInWords(low, 3)}</td>
            <td>{numberInWords(high, 3)}</td>
          </tr>
        ))}
      </tbody>
    </table>
    <BasisView topic="instrument" basis={output.basis} />
  </details>
);
