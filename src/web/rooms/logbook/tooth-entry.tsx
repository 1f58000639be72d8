import { useEffect, useState } from "react";
import { useSettings, useTeeth } from "../../record/readings.ts";
import { type Reading, readingsOf } from "../../words/tooth-words.ts";
import "../../parts/fields/fields.css";

const notationNames = { twoDigit: "two-digit", universal: "universal", quadrant: "quadrant and position" } as const;

interface ToothEntryOptions {
  /** Takes the two-digit number; empty while the text names no tooth. */
  readonly choose: (twoDigit: string) => void;
}

/** A tooth in any of the three notations, read while it is written. */
export function ToothEntry({ choose }: ToothEntryOptions) {
  const teeth = useTeeth();
  const settings = useSettings();
  const [text, setText] = useState("");
  const [picked, setPicked] = useState<string>();
  const readings = readingsOf(text, teeth.data ?? [], settings.data?.notation ?? "twoDigit");
  const chosen = readings.find(({ notation }) => notation === picked) ?? readings[0];
  const number = chosen?.tooth.twoDigit ?? "";
  // biome-ignore lint/correctness/useExhaustiveDependencies: told once for each tooth, not for each drawing
  useEffect(() => choose(number), [number]);
  return (
    <div className="tooth-entry">
      <label className="field-label" htmlFor="tooth-entry">
        Tooth, as you write it
      </label>
      <div className="tooth-entry-line">
        <input
          id="tooth-entry"
          className="field-line"
          autoComplete="off"
          placeholder="26"
          value={text}
          aria-describedby="tooth-entry-means"
          aria-invalid={text !== "" && chosen === undefined}
          onChange={(event) => setText(event.target.value)}
        />
      </div>
      <div className="tooth-entry-means" id="tooth-entry-means" role="status">
        <Means text={text} readings={readings} chosen={chosen} pick={setPicked} />
      </div>
    </div>
  );
}

interface MeansOptions {
  readonly text: string;
  readonly readings: readonly Reading[];
  readonly chosen: Reading | undefined;
  readonly pick: (notation: string) => void;
}

function Means({ text, readings, chosen, pick }: MeansOptions) {
  if (text.trim() === "") return <span className="quiet">26, 14 or “upper left 6” all name a tooth.</span>;
  if (chosen === undefined)
    return (
      <span className="look">
        “{text}” is no tooth in any notation: two-digit 11 to 48 and 51 to 85, universal 1 to 32 and A to T, or a
        quadrant with its position.
      </span>
    );
  if (readings.length === 1) return <ReadAs reading={chosen} />;
  return (
    <div className="field-choices">
      {readings.map((reading) => (
        <label key={reading.notation} className="field-choice">
          <input type="radio" name="reading" checked={reading === chosen} onChange={() => pick(reading.notation)} />
          <span>
            {reading.tooth.name} ({notationNames[reading.notation]})
          </span>
        </label>
      ))}
    </div>
  );
}

const ReadAs = ({ reading: { tooth, notation } }: { readonly reading: Reading }) => (
  <span>
    <strong>{tooth.name}</strong>{" "}
    <span className="quiet">
      read as {notationNames[notation]}; two-digit {tooth.twoDigit}, universal {tooth.universal}
    </span>
  </span>
);
