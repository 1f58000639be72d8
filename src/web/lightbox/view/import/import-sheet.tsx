import { useId, useReducer, useState } from "react";
import type { CaseView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { Dialog } from "../../../parts/dialog.tsx";
import { DayInput } from "../../../parts/fields/day-input.tsx";
import { bytesInWords } from "../../../parts/figures-in-words.ts";
import { type CropBox, movedBox, resizedBox, smallestCropPx, wholeOf } from "../../kernels/crop-box.ts";
import { purposeNames } from "../../kernels/film-name.ts";
import { type ImportChoice, importQuery } from "../../kernels/import-query.ts";
import { type CropEvent, type CropState, stepCrop } from "../../tools/crop-tool.ts";
import type { OpenedFilm } from "../../workers/pixels-messages.ts";
import type { PixelsLine } from "../use-film-pixels.ts";
import { CropPane } from "./crop-pane.tsx";
import { uploadFilm } from "./upload-film.ts";
import { useChosenFile } from "./use-chosen-file.ts";
import "./import-sheet.css";

interface ImportSheetOptions {
  readonly caseId: string;
  readonly file: File;
  /** The day to begin with. */
  readonly day: string;
  readonly taken: (view: CaseView, filmId: string) => void;
  readonly chooseOther: () => void;
  readonly close: () => void;
}

/** A file before it becomes a film: what it shows, which part is meant, when and what for it was taken. */
export function ImportSheet(options: ImportSheetOptions) {
  const picture = useChosenFile(options.file);
  const { file, close, chooseOther } = options;
  return (
    <Dialog title="Take in a film" wide close={close}>
      {picture.is === "loading" && <p aria-busy="true">Reading {file.name}</p>}
      {picture.is === "refused" && (
        <div className="say" role="alert">
          <p>{picture.says}</p>
          <Button onClick={chooseOther}>Choose another file</Button>
        </div>
      )}
      {picture.is === "open" && <Picture {...options} film={picture.film} line={picture.line} />}
    </Dialog>
  );
}

type PictureOptions = ImportSheetOptions & { readonly film: OpenedFilm; readonly line: PixelsLine };

function Picture({ caseId, file, day, taken, film, line, close }: PictureOptions) {
  const [choice, setChoice] = useState<ImportChoice>({ takenOn: day, purpose: "diagnostic", invert: false });
  const [crop, send] = useReducer(
    (state: CropState, { event, nearPx }: { event: CropEvent; nearPx: number }) =>
      stepCrop(state, event, { picture: film, nearPx }),
    {},
  );
  const [sending, setSending] = useState<{ fraction: number } | { says: string } | { done: number }>({ done: 0 });
  const done = "done" in sending ? sending.done : 0;
  const takeIn = async (count: number) => {
    setSending({ fraction: 0 });
    try {
      const query = importQuery(file.name, { ...choice, crop: crop.box }, film);
      const imported = await uploadFilm({
        caseId,
        query,
        bytes: file,
        progress: (fraction) => setSending({ fraction }),
      });
      taken(imported.case, imported.partId);
      if (crop.box === undefined) return close();
      send({ event: { is: "set", box: undefined }, nearPx: 0 });
      setSending({ done: count + 1 });
    } catch (error) {
      setSending({ says: error instanceof Error ? error.message : String(error) });
    }
  };
  const isSending = "fraction" in sending;
  return (
    <form
      className="import-sheet"
      onSubmit={(event) => {
        event.preventDefault();
        if (!isSending) void takeIn(done);
      }}
    >
      <CropPane
        film={film}
        line={line}
        window={{ ...film.window, invert: choice.invert }}
        state={crop}
        send={(event, nearPx) => send({ event, nearPx })}
      />
      <div className="import-fields">
        <p className="quiet">
          {file.name}, {film.columns} by {film.rows} pixels of {film.bitsStored} bits, {bytesInWords(file.size)}. Only
          pixels and technical values are kept; nothing that the file says about a person.
        </p>
        {film.leftOut !== undefined && (
          <p className="say">Left out, because the file states what can't be: {film.leftOut.join(", ")}.</p>
        )}
        <CropFields box={crop.box} film={film} set={(box) => send({ event: { is: "set", box }, nearPx: 0 })} />
        <ChoiceFields choice={choice} set={setChoice} />
        {"says" in sending && (
          <p className="say" role="alert">
            {sending.says}
          </p>
        )}
        {isSending && <progress max={1} value={sending.fraction} aria-label="Sending the film" />}
        {done > 0 && (
          <p role="status">
            {done === 1 ? "One film is taken in." : `${done} films are taken in.`} Drag over the next, or close.
          </p>
        )}
        <div className="dialog-feet">
          <Button type="submit" weight="strong" disabled={isSending || choice.takenOn === ""}>
            {crop.box === undefined ? "Take in the whole picture" : "Take in this part"}
          </Button>
          <Button weight="bare" onClick={close}>
            Close
          </Button>
        </div>
      </div>
    </form>
  );
}

const sides = ["column", "row", "columns", "rows"] as const;
const sideWords = { column: "from the left", row: "from the top", columns: "across", rows: "down" } as const;

interface CropFieldsOptions {
  readonly box: CropBox | undefined;
  readonly film: OpenedFilm;
  readonly set: (box: CropBox | undefined) => void;
}

function CropFields({ box, film, set }: CropFieldsOptions) {
  if (box === undefined)
    return (
      <div>
        <p>Drag over the picture to take a part of it, if it holds more than one film.</p>
        <Button weight="bare" onClick={() => set(wholeOf(film))}>
          Choose a part in numbers
        </Button>
      </div>
    );
  const change = (side: keyof CropBox, value: number) => {
    if (!Number.isFinite(value)) return;
    const step = {
      columns: side === "columns" ? value - box.columns : 0,
      rows: side === "rows" ? value - box.rows : 0,
    };
    const moved = movedBox({ ...box, ...(side === "column" || side === "row" ? { [side]: value } : {}) }, noStep, film);
    set(resizedBox(moved, step, film));
  };
  return (
    <fieldset className="crop-numbers">
      <legend>Part of the picture, in pixels</legend>
      {sides.map((side) => (
        <label key={side}>
          <span>{sideWords[side]}</span>
          <input
            type="number"
            className="field-line"
            min={side === "column" || side === "row" ? 0 : smallestCropPx}
            value={box[side]}
            onChange={({ target }) => change(side, target.valueAsNumber)}
          />
        </label>
      ))}
      <Button weight="bare" onClick={() => set(undefined)}>
        The whole picture
      </Button>
    </fieldset>
  );
}

const noStep = { columns: 0, rows: 0 };

function ChoiceFields({ choice, set }: { choice: ImportChoice; set: (choice: ImportChoice) => void }) {
  const day = useId();
  return (
    <>
      <label className="import-tick">
        <input
          type="checkbox"
          checked={choice.invert}
          onChange={({ target }) => set({ ...choice, invert: target.checked })}
        />
        <span>Turn the grey levels: what is dark here is dense</span>
      </label>
      <label className="import-day" htmlFor={day}>
        <span className="field-label">Taken on</span>
        <DayInput
          id={day}
          required
          value={choice.takenOn}
          onChange={({ target }) => set({ ...choice, takenOn: target.value })}
        />
      </label>
      <fieldset className="import-purpose">
        <legend>Taken for</legend>
        {purposeNames.map(([purpose, word]) => (
          <label key={purpose} className="field-choice">
            <input
              type="radio"
              name="purpose"
              checked={choice.purpose === purpose}
              onChange={() => set({ ...choice, purpose })}
            />
            <span>{word}</span>
          </label>
        ))}
      </fieldset>
    </>
  );
}
