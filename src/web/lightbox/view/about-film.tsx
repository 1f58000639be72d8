import { useSyncExternalStore } from "react";
import { Button } from "../../parts/button.tsx";
import { SelectField } from "../../parts/fields/choice-field.tsx";
import { DayField } from "../../parts/fields/day-field.tsx";
import { EditPart } from "../../parts/fields/editing.tsx";
import { NumberField } from "../../parts/fields/number-field.tsx";
import { TextField } from "../../parts/fields/text-field.tsx";
import { useDraftBook } from "../../record/case-access.tsx";
import { capital } from "../../words/capital.ts";
import { filmTakenOut } from "../kernels/film-gestures.ts";
import { dayName, type Film, filmName, purposeNames } from "../kernels/film-name.ts";
import { useCaseOnBox } from "./case-on-box.ts";
import type { LightBox } from "./light-box.ts";
import { TubeAngleField } from "./tube-angle-field.tsx";

const purposeWords = Object.fromEntries(purposeNames);
const receptorWords: Readonly<Record<Film["body"]["receptor"], string>> = {
  turnsWithBeam: "turned with the beam",
  fixed: "left in its place",
  unknown: "not known",
};
const rightWords: Readonly<Record<Film["body"]["uRunsTo"], string>> = {
  distal: "distal",
  mesial: "mesial",
  unknown: "not known",
};

/** What is known of the film itself, changed in its place: each field is one gesture. */
export function AboutFilm({ box }: { readonly box: LightBox }) {
  const { film, presentedOn, marks } = box;
  const book = useDraftBook(useCaseOnBox().caseId);
  useSyncExternalStore(book.watch, book.count);
  const title = capital(filmName(film, presentedOn));
  return (
    <section className="about-film" aria-label="This film">
      <h2>
        This film <span className="about-film-day">{dayName(presentedOn, film.body.takenOn)}</span>
      </h2>
      <EditPart part={film} title={title} draft={book.of(film.id)} book={book}>
        <div className="fields">
          <DayField at="takenOn" label="Taken on" />
          <SelectField at="purpose" label="Taken for" words={purposeWords} />
          <TextField at="caption" label="Caption" prose />
          <TubeAngleField />
          <NumberField at="verticalAngleDeg" label="Vertical angle" unit="°" />
          <SelectField at="receptor" label="Receptor" words={receptorWords} />
          <SelectField at="uRunsTo" label={rightLabel(film)} words={rightWords} />
        </div>
      </EditPart>
      <p className="quiet">{pixelsInWords(film)}</p>
      <Button weight="bare" onClick={() => box.record(filmTakenOut(box, marks))}>
        Take this film out
      </Button>
    </section>
  );
}

/** The side is that of the film as it was taken in; how it is looked at does not change it. */
function rightLabel({ body: { view } }: Film): string {
  const isTurned = view !== undefined && (view.mirrored || view.quarterTurns !== 0);
  return isTurned ? "To the right, unturned, lies" : "To the right lies";
}

function pixelsInWords({ body: { columns, rows, bitsStored, technical } }: Film): string {
  const { sourceFormat, lossy, crop, inverted } = technical;
  return [
    `${columns} by ${rows} pixels of ${bitsStored} bits, from ${sourceFormat.toUpperCase()}`,
    ...(lossy ? ["compressed with loss"] : []),
    ...(crop === undefined ? [] : ["a part of the picture"]),
    ...(inverted ? ["grey levels turned at import"] : []),
  ].join(", ");
}
