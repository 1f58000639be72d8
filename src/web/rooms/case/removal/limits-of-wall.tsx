import type { RemovalTold } from "../../../../ledger/removal-told.ts";
import { sourceName } from "../../../../pages/source-name.ts";
import { quantityInWords } from "../../../parts/figures-in-words.ts";
import { SeenMark } from "../../../parts/seen-mark.tsx";

interface LimitsOfWallOptions {
  readonly limits: NonNullable<RemovalTold["platform"]>["limits"];
}

/** The thresholds that the wall left is read against, one's own among the published. */
export const LimitsOfWall = ({ limits }: LimitsOfWallOptions) =>
  limits.length === 0 ? null : (
    <ul className="removal-limits" aria-label="Thresholds">
      {limits.map(({ source, limitMm, mark, stands }) => (
        <li key={source + limitMm}>
          {stands === "below" ? "◆ below " : stands === "above" ? "○ above " : "against "}
          {quantityInWords(limitMm, "mm")}, {mark === "own" ? "your own limit" : sourceName(source)}{" "}
          {mark !== "own" && <SeenMark verification={mark} />}
        </li>
      ))}
    </ul>
  );
