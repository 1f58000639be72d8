import { useId, useState } from "react";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { quantityInWords } from "../../parts/figures-in-words.ts";
import { isCanalName } from "../kernels/canal-names.ts";
import { listedValue } from "../kernels/drawn-readings.ts";
import { markNamed, markTakenOff } from "../kernels/film-gestures.ts";
import { entryOf, numberOf } from "../kernels/ledger-reading.ts";
import { type Mark, markName } from "../kernels/mark-shape.ts";
import { marksByOwner } from "../kernels/marks-by-owner.ts";
import type { LightBox } from "./light-box.ts";

interface MarksListOptions {
  readonly box: LightBox;
  readonly canals: readonly string[];
  readonly ledger: readonly LedgerEntry[];
}

const spotKinds = { apex: "apex", fillingEnd: "filling's end", level: "level" } as const;
const kindOf = (body: Mark["body"]): string =>
  body.shape === "spot" && body.is !== undefined ? spotKinds[body.is] : shapes[body.shape];

const shapes: Readonly<Record<Mark["body"]["shape"], string>> = {
  trace: "course",
  knownLength: "known length",
  distance: "distance",
  outline: "outline",
  spot: "spot",
  fragment: "fragment",
  crownRoot: "crown, root",
  wall: "wall",
};

/** Everything that is marked on the film, canal by canal: chosen, named, read and taken off from here. */
export function MarksList({ box, canals, ledger }: MarksListOptions) {
  if (box.marks.length === 0) return null;
  return (
    <section className="marks" aria-label="Marks">
      <h2>Marks</h2>
      {marksByOwner(box.marks).map(({ owner, marks }) => (
        <div key={owner} className="marks-of-canal">
          {owner !== "" && <h3>{owner}</h3>}
          <ul>
            {marks.map((mark) => (
              <MarkLine key={mark.id} {...{ box, mark, canals, ledger }} />
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

type MarkLineOptions = MarksListOptions & { readonly mark: Mark };

function MarkLine({ box, mark, canals, ledger }: MarkLineOptions) {
  const { body } = mark;
  const isChosen = box.chosen?.markId === mark.id;
  return (
    <li data-chosen={isChosen}>
      <button type="button" aria-pressed={isChosen} onClick={() => box.choose({ markId: mark.id })}>
        <span className="mark-sign" data-shape={body.shape} aria-hidden="true" />
        {kindOf(body)}
      </button>
      {body.shape === "knownLength" ? (
        <span>{body.lengthMm} mm</span>
      ) : (
        <MarkNameField key={nameOf(body)} box={box} mark={mark} canals={canals} />
      )}
      <Listed ledger={ledger} mark={mark} />
      <button
        type="button"
        className="mark-off"
        aria-label={`Take off ${markName(body)}`}
        title="Take off (Delete)"
        onClick={() => box.record(markTakenOff(mark, box))}
      >
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M4 4l8 8M12 4l-8 8" />
        </svg>
      </button>
    </li>
  );
}

/** The one value that stands for a mark. */
function Listed({ ledger, mark }: { readonly ledger: readonly LedgerEntry[]; readonly mark: Mark }) {
  const listed = listedValue(mark.body);
  const entry = listed && entryOf(ledger, listed.topic, mark.id);
  const number = listed && numberOf(entry, listed.name);
  return (
    <span className="mark-value">
      {listed && number && quantityInWords(number.value, listed.unit, number.interval)}
    </span>
  );
}

function MarkNameField({ box, mark, canals }: { box: LightBox; mark: Mark; canals: readonly string[] }) {
  const { body } = mark;
  const bound = isBound(body);
  const stands = nameOf(body);
  const [typed, setTyped] = useState(stands);
  const offers = useId();
  const accepts = !bound || typed === "" || isCanalName(typed);
  const finish = () => {
    const name = typed.trim();
    if (name !== stands && accepts) box.record(markNamed(mark, name, box));
  };
  return (
    <>
      <input
        className="mark-name-field"
        value={typed}
        list={offers}
        placeholder={bound ? `which ${ownerOf(body)}` : "what it is"}
        aria-label={labelOf(body)}
        aria-invalid={accepts ? undefined : true}
        title={accepts ? undefined : "A canal's name is a capital, then letters and digits, as MB2"}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={finish}
        onKeyDown={(event) => {
          if (event.key === "Enter") event.currentTarget.blur();
          if (event.key === "Escape") setTyped(stands);
        }}
      />
      <datalist id={offers}>
        {(bound ? canals : (offersFor[body.shape] ?? [])).map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
    </>
  );
}

/** What a mark of no canal and no root is called as a rule. */
const offersFor: Readonly<Partial<Record<Mark["body"]["shape"], readonly string[]>>> = {
  distance: ["root length", "crown to bone", "lesion width"],
  outline: ["lesion", "pulp chamber", "filling", "perforation"],
  spot: ["cementoenamel junction", "bone crest"],
};

/** Whether a mark is named by its canal or root and not by words of its own. */
const isBound = (body: Mark["body"]): boolean =>
  body.shape === "trace" ||
  body.shape === "fragment" ||
  body.shape === "crownRoot" ||
  body.shape === "wall" ||
  (body.shape === "spot" && body.is !== undefined);

const ownerOf = ({ shape }: Mark["body"]): string => (shape === "crownRoot" ? "root" : "canal");

function nameOf(body: Mark["body"]): string {
  if (body.shape === "crownRoot") return body.root ?? "";
  if (isBound(body)) return "canal" in body ? (body.canal ?? "") : "";
  return "what" in body ? body.what : "";
}

function labelOf(body: Mark["body"]): string {
  if (body.shape === "trace") return "Canal of this course";
  return isBound(body) ? `Its ${ownerOf(body)}: ${markName(body)}` : `Name of this ${shapes[body.shape]}`;
}
