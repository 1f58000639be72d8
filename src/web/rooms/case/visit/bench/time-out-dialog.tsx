import { useState } from "react";
import { timeOutAnswer, withTimeOut } from "../../../../../record/chairside/time-out-answer.ts";
import { useTeeth } from "../../../../record/readings.ts";
import { ChairDialog } from "./chair-dialog.tsx";
import { keysOf, type Target, Targets } from "./targets.tsx";
import { useBench, useToothOfCase } from "./use-bench.ts";

type FilmSide = "checked" | "noFilm" | "notChecked";

const filmSides: readonly Target<FilmSide>[] = [
  { value: "checked", says: "The film is the right way round", hint: "f" },
  { value: "noFilm", says: "There is no film", hint: "g" },
  { value: "notChecked", says: "Not checked", hint: "h" },
];
const askedOf: readonly Target<string>[] = [
  { value: "the assistant", says: "The assistant", hint: "a" },
  { value: "the supervisor", says: "The supervisor", hint: "s" },
  { value: "the patient", says: "The patient", hint: "p" },
  { value: "nobody else", says: "Nobody else", hint: "n" },
];
/** As a chart is read: the patient's right at the left. */
const permanent = ["1", "2", "4", "3"] as const;
const primary = ["5", "6", "8", "7"] as const;
const sideOf: Readonly<Record<string, string>> = {
  ...{ "1": "upper right", "2": "upper left", "3": "lower left", "4": "lower right" },
  ...{
    "5": "upper right, primary",
    "6": "upper left, primary",
    "7": "lower left, primary",
    "8": "lower right, primary",
  },
};

/** Tooth and side are named anew, nothing chosen before; another tooth than the case's is a stop. */
export function TimeOutDialog({ close }: { readonly close: () => void }) {
  const { visit, record, minute } = useBench("Time-out");
  const { twoDigit: ofCase } = useToothOfCase();
  const [quadrant, setQuadrant] = useState<string>();
  const [position, setPosition] = useState<string>();
  const [film, setFilm] = useState<FilmSide>();
  const [by, setBy] = useState<string>();
  const tooth = quadrant !== undefined && position !== undefined ? `${quadrant}${position}` : undefined;
  const name = useTeeth().data?.find(({ twoDigit }) => twoDigit === tooth)?.name;
  const answer = tooth === undefined ? undefined : timeOutAnswer(ofCase, tooth);
  const isWhole = tooth !== undefined && film !== undefined && by !== undefined;
  const takeQuadrant = (next: string) => {
    setQuadrant(next);
    setPosition(undefined);
  };
  const isPrimary = Number(quadrant) > 4;
  const quadrants = Number(ofCase[0]) > 4 ? [...permanent, ...primary] : permanent;
  const digit = (key: string) => {
    const taken = quadrant === undefined || tooth !== undefined ? takeQuadrant : setPosition;
    const allowed = taken === takeQuadrant ? quadrants.some((one) => one === key) : Number(key) <= (isPrimary ? 5 : 8);
    if (allowed) taken(key);
  };
  const save = () => {
    if (tooth === undefined || film === undefined || by === undefined || answer === undefined) return;
    const atMin = minute();
    const check = { tooth, filmSide: film, by, ...(atMin === undefined ? {} : { atMin }) };
    record(
      withTimeOut(visit, ofCase, check),
      answer.matches ? `${tooth} named, tooth and side checked` : `${tooth} named, not the case's tooth`,
    );
    close();
  };
  const digits = ["1", "2", "3", "4", "5", "6", "7", "8"];
  const keys = {
    ...Object.fromEntries(digits.map((key) => [key, () => digit(key)])),
    ...keysOf(filmSides, setFilm),
    ...keysOf(askedOf, setBy),
  };
  const isMismatch = answer?.matches === false;
  return (
    <ChairDialog
      {...{ close, keys }}
      title="Time-out: which tooth, on which side?"
      records={isMismatch ? "Record what was named; the time-out stays open" : "Tooth and side checked"}
      record={isWhole ? save : undefined}
      missing="Look at the patient and the film, then name quadrant, tooth, film and who was asked."
      isLook={isMismatch}
    >
      <Targets
        label="Quadrant (the patient’s right is at the left)"
        columns={2}
        targets={quadrants.map((value) => ({ value, says: sideOf[value], hint: value }))}
        value={quadrant}
        choose={takeQuadrant}
      />
      {quadrant !== undefined && (
        <Targets
          label="Tooth, counted from the midline"
          columns={8}
          targets={digits.slice(0, isPrimary ? 5 : 8).map((value) => ({ value, says: value }))}
          value={position}
          choose={setPosition}
        />
      )}
      {tooth !== undefined && answer !== undefined && (
        <div className={isMismatch ? "time-out-stop" : "time-out-named"} role={isMismatch ? "alert" : "status"}>
          {isMismatch ? (
            <>
              <strong>Stop. This is not the tooth of this case.</strong>
              <p>{answer.says}</p>
              <p>Open nothing until it is clear which of the two is wrong.</p>
            </>
          ) : (
            <strong>
              ✓ {tooth}, {name}: as the case has it
            </strong>
          )}
        </div>
      )}
      <Targets label="Film" targets={filmSides} value={film} choose={setFilm} />
      <Targets label="Who was asked" targets={askedOf} value={by} choose={setBy} />
    </ChairDialog>
  );
}
