import type { KeyboardEvent, ReactNode } from "react";
import { Dialog } from "../../../../parts/dialog.tsx";
import { inTextField } from "../../../../parts/shortcuts.ts";
import { EntryFeet } from "../../entry/entry-feet.tsx";

interface ChairDialogOptions {
  readonly title: string;
  readonly close: () => void;
  /** What single keys press, outside of fields that take text. */
  readonly keys?: Readonly<Record<string, () => void>>;
  /** The words of the button that records. */
  readonly records: string;
  /** Absent while something is missing; then `missing` says what. */
  readonly record: (() => void) | undefined;
  readonly missing?: string;
  readonly isLook?: boolean;
  readonly children: ReactNode;
}

/** A dialog for gloved hands: large targets with their keys, Enter records, Escape leaves it. */
export function ChairDialog({
  title,
  close,
  keys = {},
  records,
  record,
  missing,
  isLook,
  children,
}: ChairDialogOptions) {
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const onButton = event.target instanceof HTMLButtonElement || event.target instanceof HTMLTextAreaElement;
    const act = event.key === "Enter" ? (onButton ? undefined : record) : typed(event, keys);
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  return (
    <Dialog title={title} close={close} wide>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the targets inside */}
      <div className="chair-dialog" onKeyDown={press}>
        {children}
        {record === undefined && missing !== undefined && <p className="quiet">{missing}</p>}
        <EntryFeet {...{ record, close, isLook }}>{records}</EntryFeet>
      </div>
    </Dialog>
  );
}

const typed = ({ key, target }: KeyboardEvent, keys: Readonly<Record<string, () => void>>): (() => void) | undefined =>
  inTextField(target) ? undefined : keys[key.toLowerCase()];
