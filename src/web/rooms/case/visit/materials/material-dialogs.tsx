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
export interface MaterialDialogsOptions {
  /** Which one is open; none where absent. */
  readonly open: MaterialEntered | undefined;
  readonly close: () => void;
  /** The minute of the visit's clock; absent while it has not been started. */
  readonly atMin: number | undefined;
}

/** The dialog in which something that was given, used or left is entered by a few keys. Stands inside the visit's fields. */
export function MaterialDialogs({ open }: MaterialDialogsOptions) {
  return open === undefined ? null : null;
}
