import { useState } from "react";
import { useField } from "../../parts/fields/editing.tsx";
import { faultProps, Labelled } from "../../parts/fields/labelled.tsx";
import { readNumber } from "../../parts/fields/number-field.tsx";
import { signedAngle, type TubeSide, tubeAngleInWords, tubeSide } from "../kernels/tube-angle.ts";

const sides: readonly TubeSide[] = ["mesial", "distal"];

/** How far the tube was moved from straight on, and to which side: the side in words, never by a sign alone. */
export function TubeAngleField() {
  const field = useField("horizontalAngleDeg", "Tube angle");
  const stands = typeof field.value === "number" ? field.value : undefined;
  const [typed, setTyped] = useState<string>();
  const side = tubeSide(stands ?? 0);
  const read = typed === undefined ? undefined : readAngle(typed);
  const fault = read?.fault ?? field.fault;
  const write = (size: number | undefined, to: TubeSide, when: "now" | "typing") => {
    const angle = size === undefined ? undefined : signedAngle(size, to);
    field.write(angle, angle === undefined ? "emptied" : tubeAngleInWords(angle), when);
  };
  const type = (text: string) => {
    setTyped(text);
    const { size, side: typedSide = side, fault: bad } = readAngle(text);
    if (bad === undefined) write(size, typedSide, "typing");
  };
  return (
    <Labelled field={{ ...field, fault }} label="Tube angle">
      <span className="tube-angle">
        <input
          id={field.id}
          className="field-line"
          inputMode="decimal"
          autoComplete="off"
          placeholder="not known"
          value={typed ?? (stands === undefined ? "" : String(Math.abs(stands)))}
          {...faultProps({ id: field.id, fault })}
          onChange={(event) => type(event.target.value)}
          onBlur={() => fault === undefined && setTyped(undefined)}
        />
        <span className="field-unit" aria-hidden="true">
          °
        </span>
        {stands === 0 && <span className="field-unit">straight on</span>}
        {stands !== undefined && stands !== 0 && (
          <select
            className="field-select"
            aria-label="Side from which the film was taken"
            value={side}
            onChange={({ target }) => write(stands, target.value === "distal" ? "distal" : "mesial", "now")}
          >
            {sides.map((one) => (
              <option key={one} value={one}>
                from {one}
              </option>
            ))}
          </select>
        )}
      </span>
    </Labelled>
  );
}

/** As far as a tube is moved for a film of one tooth. */
const mostDeg = 60;

/** What is typed as an angle; a sign names the side as the record writes it. */
function readAngle(text: string): { size?: number; side?: TubeSide; fault?: string } {
  const { value, fault } = readNumber(text, {}, false);
  if (fault !== undefined) return { fault };
  if (typeof value !== "number") return {};
  if (Math.abs(value) > mostDeg) return { fault: `at most ${mostDeg}° to either side` };
  return { size: Math.abs(value), ...(value < 0 ? { side: "distal" } : {}) };
}
