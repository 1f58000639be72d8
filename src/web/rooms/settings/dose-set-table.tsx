import type { DoseSetOffered } from "../../../ledger/clinic-offered.ts";
import { sourceName } from "../../../pages/source-name.ts";
import "../../parts/ruled-table.css";

/** One published set of dose limits as it is printed. */
export const DoseSetTable = ({ set, isChosen }: { readonly set: DoseSetOffered; readonly isChosen: boolean }) => (
  <table className="ruled-table dose-set">
    <caption>
      {isChosen && "✓ chosen: "}
      {set.says}
    </caption>
    <thead>
      <tr>
        <th scope="col">Agent</th>
        <th scope="col">mg/kg</th>
        <th scope="col">mg in all</th>
        <th scope="col">From</th>
      </tr>
    </thead>
    <tbody>
      {set.rows.map(({ agent, mgPerKg, maxMg, source }) => (
        <tr key={agent}>
          <th scope="row">{agent}</th>
          <td>{mgPerKg ?? "none printed"}</td>
          <td>{maxMg ?? "none printed"}</td>
          <td>{source.split(", ").map(sourceName).join(", ")}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
