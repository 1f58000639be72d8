import { strainText } from "../../../figures/strain-ramp.ts";
import { bendAbout } from "../../../ledger/strain-on-film.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { dayInWords } from "../../parts/days-in-words.ts";
import { useCaseOnBox } from "./case-on-box.ts";
import type { LightBox } from "./light-box.ts";
import { useStrainShown } from "./use-strain-shown.ts";

interface StrainSectionOptions {
  readonly box: LightBox;
  readonly ledger: readonly LedgerEntry[];
}

/** The instruments that were seated in the chosen canal, else in all traced here; the strain of one can be laid over the film. */
export function StrainSection({ box, ledger }: StrainSectionOptions) {
  const { parts } = useCaseOnBox();
  const { bends, shown, show } = useStrainShown(box.film.id, ledger);
  const own = bends.filter(({ on }) => on.trace === box.chosen?.markId);
  const listed = bends.filter((one) => own.length === 0 || own.includes(one) || one === shown);
  if (bends.length === 0) return null;
  return (
    <section className="strain" aria-label="Strain of instruments">
      <h2>Strain of instruments</h2>
      <ul className="strain-list">
        {listed.map(({ entry, told }) => {
          const about = bendAbout(entry, parts);
          const isShown = entry.id === shown?.entry.id;
          return (
            <li key={entry.id}>
              <button
                type="button"
                className="strain-toggle"
                aria-pressed={isShown}
                title={isShown ? "Take the strain off the film" : "Show the strain on the film"}
                onClick={() => show(isShown ? undefined : entry.id)}
              >
                <span aria-hidden="true">{isShown ? "■" : "□"}</span> {about?.name} in {about?.canal}
                <span className="quiet">
                  , {dayInWords(about?.on ?? "")}
                  {about?.broke && ", where it broke"}: most {strainText(told.peakStrain)}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      {shown && <Steps />}
    </section>
  );
}

/** What the colours on the film stand for. */
const Steps = () => (
  <p className="quiet">
    Thin and blue below 1 %, then broader and lighter from 1, 2.5 and 5 %, broadest above 10 %; the ring marks the
    largest.
  </p>
);
