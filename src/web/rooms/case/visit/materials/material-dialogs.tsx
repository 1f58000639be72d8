import { useCabinet } from "../../../../record/cabinet.ts";
import { AnaestheticDialog } from "./anaesthetic-dialog.tsx";
import type { DialogOptions } from "./dialog-options.ts";
import { FillingDialog } from "./filling-dialog.tsx";
import { IrrigantDialog } from "./irrigant-dialog.tsx";
import { MedicamentDialog } from "./medicament-dialog.tsx";
import { SolventDialog } from "./solvent-dialog.tsx";
import { TemporaryDialog } from "./temporary-dialog.tsx";
import { UltrasoundDialog } from "./ultrasound-dialog.tsx";

/** What can be entered by keys at the chair. */
export type MaterialEntered =
  | "anaesthetic"
  | "irrigant"
  | "solvent"
  | "ultrasound"
  | "medicament"
  | "temporary"
  | "filling";

/** What an entry dialog of a visit is given. */
interface MaterialDialogsOptions extends DialogOptions {
  /** Which one is open; none where absent. */
  readonly open: MaterialEntered | undefined;
}

const dialogs = {
  irrigant: IrrigantDialog,
  anaesthetic: AnaestheticDialog,
  ultrasound: UltrasoundDialog,
  solvent: SolventDialog,
  medicament: MedicamentDialog,
  temporary: TemporaryDialog,
  filling: FillingDialog,
};

/** The dialog in which something that was given, used or left is entered by a few keys. Stands inside the visit's fields. */
export function MaterialDialogs({ open, close, atMin }: MaterialDialogsOptions) {
  // Read while the page is open, so that the stock is there when a dialog opens.
  useCabinet();
  if (open === undefined) return null;
  const Open = dialogs[open];
  return <Open {...{ close, atMin }} />;
}
