import type { MissedCanalTold } from "../../../../ledger/missed-canal-told.ts";
import { harmWords, lookWords } from "../../../../record/words/search-words.ts";
import { Button } from "../../../parts/button.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { isLookKind, type LookKind } from "./add-look.tsx";

type NextLook = MissedCanalTold["nextBestLook"][number];

interface NextLooksOptions {
  readonly looks: readonly NextLook[];
  /** Asks for the result of one; absent where the case is only looked at. */
  readonly take: ((kind: LookKind) => void) | undefined;
}

/** What is left to look at: first what does the least harm, inside of that what takes away most doubt. */
export function NextLooks({ looks, take }: NextLooksOptions) {
  if (looks.length === 0) return <p className="quiet">Nothing is left to look at.</p>;
  const classes = ([1, 2, 3, 4] as const).map((harm) => ({ harm, left: looks.filter((one) => one.harm === harm) }));
  return (
    <div className="form-part next-looks">
      <h2>Next, by what it costs</h2>
      <dl>
        {classes
          .filter(({ left }) => left.length > 0)
          .map(({ harm, left }) => (
            <div key={harm}>
              <dt>{capital(harmWords[harm])}</dt>
              <dd>
                <ul>
                  {left.map((look) => (
                    <Next key={look.kind} look={look} isBest={look === looks[0]} take={take} />
                  ))}
                </ul>
                <NotRanked looks={left} />
                {harm === 3 && <WhyCbct />}
                {harm === 4 && <WallKnown />}
              </dd>
            </div>
          ))}
      </dl>
    </div>
  );
}

/** Why films and the microscope were not enough. */
export const WhyCbct = () => (
  <TextField at="lessWasNotEnough" label="Why less than a CBCT was not enough" optional prose />
);

/** The wall where a trough would cut. */
export const WallKnown = () => (
  <div className="fields">
    <NumberField at="wallKnownMm" label="Wall where a trough cuts" unit="mm" digits={1} />
  </div>
);

interface NextOptions extends Pick<NextLooksOptions, "take"> {
  readonly look: NextLook;
  readonly isBest: boolean;
}

function Next({ look: { kind, says, expectedFallBits, needs }, isBest, take }: NextOptions) {
  return (
    <li data-best={isBest}>
      <span>
        {isBest && <strong>First: </strong>}
        {sentenceInWords(says)}
        {expectedFallBits !== undefined && (
          <span className="quiet"> Takes away {numberInWords(expectedFallBits, 2)} bit of doubt on average.</span>
        )}
        {needs !== undefined && <span className="look"> ◇ {sentenceInWords(needs)}</span>}
      </span>
      {take && isLookKind(kind) && (
        <Button weight="bare" onClick={() => take(kind)}>
          Done<span className="unseen">: {lookWords[kind]}</span>
        </Button>
      )}
    </li>
  );
}

/** Looks of one class whose accuracy nobody has published stand behind the others, in no order. */
function NotRanked({ looks }: { readonly looks: readonly NextLook[] }) {
  const open = looks.filter(({ missing }) => missing.length > 0);
  if (open.length === 0) return null;
  const names = open.map(({ kind }) => (isLookKind(kind) ? lookWords[kind] : kind)).join(", ");
  const which = open.length < looks.length ? `not ranked (${names})` : "not ranked";
  return <p className="quiet">{capital(which)}: sensitivity and specificity for this are not published.</p>;
}
