import { useSyncExternalStore } from "react";
import type { BodyOf } from "../../../../record/parts.ts";
import { filmName } from "../../../lightbox/kernels/film-name.ts";
import { pairingSaid, receptorSaid } from "../../../lightbox/two-view/pairing-gestures.ts";
import { TubeAngleField } from "../../../lightbox/view/tube-angle-field.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { EditPart } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { useDraftBook } from "../../../record/case-access.tsx";
import { capital } from "../../../words/capital.ts";
import { receptorMeaning } from "../../../words/two-view-words.ts";
import { PairingNumber } from "./pairing-number.tsx";
import { type FilmInWork, useTwoView } from "./two-view-work.ts";

const rightWords: Readonly<Record<BodyOf<"film">["uRunsTo"], string>> = {
  distal: "distal",
  mesial: "mesial",
  unknown: "not known",
};

/** How the films were taken: where the tube stood for each, and how the receptor was held for all. */
export function FilmsSection() {
  const { films, hand, record } = useTwoView();
  return (
    <section className="films-section" aria-label="How the films were taken">
      <h2>How the films were taken</h2>
      {films.map((one, index) => (
        <FilmFacts key={one.film.id} one={one} index={index} />
      ))}
      <ReceptorChoice />
      {films.length > 1 && (
        <div className="fields">
          <PairingNumber
            label="Tube to tooth, if known"
            unit="mm"
            value={hand.pairing?.body.sourceToToothMm}
            range={{ low: 50, high: 5000 }}
            write={(value) =>
              record(pairingSaid(hand, "sourceToToothMm", { value, words: said("tube to tooth", value, "mm") }))
            }
          />
          <PairingNumber
            label="Tooth to detector, if known"
            unit="mm"
            value={hand.pairing?.body.toothToDetectorMm}
            range={{ low: 0, high: 200 }}
            write={(value) =>
              record(pairingSaid(hand, "toothToDetectorMm", { value, words: said("tooth to detector", value, "mm") }))
            }
          />
          <PairingNumber
            label="Error of an angle, if not 1°"
            unit="°"
            value={hand.pairing?.body.angleSigmaDeg}
            range={{ low: 0, high: 20 }}
            write={(value) =>
              record(pairingSaid(hand, "angleSigmaDeg", { value, words: said("error of an angle", value, "degrees") }))
            }
          />
        </div>
      )}
    </section>
  );
}

const said = (what: string, value: number | undefined, unit: string): string =>
  value === undefined ? `${what} emptied` : `${what} ${value} ${unit}`;

function FilmFacts({ one: { film }, index }: { readonly one: FilmInWork; readonly index: number }) {
  const { caseId, presentedOn } = useTwoView();
  const book = useDraftBook(caseId);
  useSyncExternalStore(book.watch, book.count);
  const title = capital(filmName(film, presentedOn));
  return (
    <EditPart part={film} title={title} draft={book.of(film.id)} book={book}>
      <h3>
        Film {index + 1} <span className="quiet">{filmName(film, presentedOn)}</span>
      </h3>
      <div className="fields">
        <TubeAngleField />
        <NumberField at="verticalAngleDeg" label="Vertical angle" unit="°" />
        <SelectField at="uRunsTo" label="To the right lies" words={rightWords} />
      </div>
    </EditPart>
  );
}

const receptors = ["turnsWithBeam", "fixed", "unknown"] as const;

/** How the receptor was held, said once for all films, each answer with what it means. */
function ReceptorChoice() {
  const { films, record } = useTwoView();
  const held = new Set(films.map(({ film }) => film.body.receptor));
  const now = held.size === 1 ? [...held][0] : undefined;
  return (
    <fieldset className="receptor-choice">
      <legend>Receptor while the tube was moved</legend>
      {receptors.map((receptor) => (
        <label key={receptor}>
          <input
            type="radio"
            name="receptor"
            checked={now === receptor}
            onChange={() =>
              record(
                receptorSaid(
                  films.map(({ film }) => film),
                  receptor,
                ),
              )
            }
          />
          <span>
            {receptorMeaning[receptor].name}
            <span className="quiet">{receptorMeaning[receptor].means}</span>
          </span>
        </label>
      ))}
      {now === undefined && <p className="asking-fault">The films say different things; choose one for all.</p>}
    </fieldset>
  );
}
