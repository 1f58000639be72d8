import type { CabinetItemOf } from "../../../../record/cabinet/cabinet-item.ts";
import { fileAtFirst, type UseStep } from "../../../../record/cabinet/steps-into-canal.ts";
import type { FileTaken } from "../../../../record/cabinet/use-of-step.ts";
import type { CabinetView } from "../../../../server/api.ts";

/** Which counted file the person chose for which step; an empty text for none. */
export type FilesChosen = Readonly<Record<number, string>>;

interface StepAt {
  readonly step: UseStep;
  readonly index: number;
}

/** The counted file of a step: the one that the person chose, else the only one in use. */
export function fileOfStep(chosen: FilesChosen, { step, index }: StepAt): CabinetItemOf<"file"> | undefined {
  const id = chosen[index];
  return id === undefined ? fileAtFirst(step) : step.files.find((file) => file.id === id);
}

/** The same with what stands against it now. */
export function fileTakenAt(
  chosen: FilesChosen,
  at: StepAt,
  { files }: Pick<CabinetView, "files">,
): FileTaken | undefined {
  const file = fileOfStep(chosen, at);
  return file && { file, standing: files[file.id] };
}
