import type { CabinetItemOf } from "../../../../record/cabinet/cabinet-item.ts";
import { filesInUse, type UseStep } from "../../../../record/cabinet/steps-into-canal.ts";
import { type CanalEntered, useOfStep as rowOfStep } from "../../../../record/cabinet/use-of-step.ts";
import type { CabinetView } from "../../../../server/api.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { fileState, fileStateWords } from "../../instruments/file-state.ts";
import { nameOfItem } from "../../instruments/item-names.ts";
import { measuresOf } from "../../instruments/measures-of.ts";
import { SizeMark } from "../../instruments/size-mark.tsx";
import { type FilesChosen, fileOfStep } from "./file-of-step.ts";

interface StepsPreviewOptions {
  readonly view: CabinetView;
  readonly canal: CanalEntered;
  readonly steps: readonly UseStep[];
  readonly files: FilesChosen;
  readonly choose: (index: number, file: string) => void;
}

/** What is about to be recorded, row by row; what speaks against a file is said before it is. */
export function StepsPreview({ view, canal, steps, files, choose }: StepsPreviewOptions) {
  return (
    <section className="entry-preview" aria-label="What is recorded">
      <table>
        <caption className="unseen">Rows for {canal.canal ?? "no named canal"}</caption>
        <thead>
          <tr>
            <th scope="col">Instrument</th>
            <th scope="col">Depth, mm</th>
            <th scope="col">For, s</th>
            <th scope="col">Turns /min</th>
            <th scope="col">Counted file</th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a sequence may hold one instrument twice; its place is its name
            <StepRow key={index} {...{ view, canal, step, index, files, choose }} />
          ))}
        </tbody>
      </table>
      {canal.workingLengthMm === undefined && (
        <p className="quiet">
          {canal.canal === undefined
            ? "No canal stands in this visit's table: the rows name none and have no depth."
            : `The working length of ${canal.canal} is not in this visit's table: the rows have no depth.`}
        </p>
      )}
    </section>
  );
}

interface StepRowOptions extends Omit<StepsPreviewOptions, "steps"> {
  readonly step: UseStep;
  readonly index: number;
}

function StepRow({ view, canal, step, index, files, choose }: StepRowOptions) {
  const { depthMm, seconds, rpm } = rowOfStep(step, canal);
  const file = fileOfStep(files, { step, index });
  const name = nameOfItem(step.instrument);
  return (
    <tr>
      <th scope="row">
        {name} <SizeMark colour={measuresOf(view.shown[step.instrument.id])?.colour} />
      </th>
      <td>{depthMm ?? "none"}</td>
      <td>{seconds ?? "none"}</td>
      <td>{rpm ?? "none"}</td>
      <td>
        {step.files.length === 0 ? (
          <span className="quiet">none counted</span>
        ) : (
          <select
            className="field-select"
            aria-label={`Counted file of ${name}, row ${index + 1}`}
            value={file?.id ?? ""}
            onChange={({ target }) => choose(index, target.value)}
          >
            <option value="">not counted</option>
            {step.files.map((one) => (
              <option key={one.id} value={one.id}>
                {nameOfItem(one)}
                {one.body.discarded ? ", discarded" : ""}
              </option>
            ))}
          </select>
        )}
        <Against {...{ view, step, file }} isChosen={files[index] !== undefined} />
      </td>
    </tr>
  );
}

interface AgainstOptions {
  readonly view: CabinetView;
  readonly step: UseStep;
  readonly file: CabinetItemOf<"file"> | undefined;
  readonly isChosen: boolean;
}

/** What speaks against the file that is taken, or why none is. */
function Against({ view, step, file, isChosen }: AgainstOptions) {
  if (file !== undefined) {
    const { is, says } = fileState(file, view);
    if (is === "open") return null;
    return (
      <span className="entry-against">
        <strong className="file-flag" data-is={is}>
          {fileStateWords[is]}
        </strong>{" "}
        {says.join("; ")}
      </span>
    );
  }
  if (isChosen || step.files.length === 0) return null;
  const inUse = filesInUse(step).length;
  return (
    <span className="entry-against">
      <strong className="file-flag">
        {inUse === 0 ? "every file of it was discarded" : `${countOf(inUse, "file")} in use: choose which`}
      </strong>
    </span>
  );
}
