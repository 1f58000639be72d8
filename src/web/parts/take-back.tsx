import "./take-back.css";

interface TakeBackOptions {
  /** What an undo or a redo would take back, in words. */
  readonly view: { readonly undo?: { readonly words: string }; readonly redo?: { readonly words: string } };
  readonly undo: () => void;
  readonly redo: () => void;
}

/** Undo and redo, each saying what it would do: the same in every room. */
export const TakeBack = ({ view, undo, redo }: TakeBackOptions) => (
  <span className="take-back-pair">
    <Way label="Undo" keys="Control+z" line={view.undo?.words} act={undo} />
    <Way label="Redo" keys="Control+Shift+z" line={view.redo?.words.replace(/^Undo: /, "")} act={redo} />
  </span>
);

interface WayOptions {
  readonly label: "Undo" | "Redo";
  readonly keys: string;
  readonly line: string | undefined;
  readonly act: () => void;
}

const Way = ({ label, keys, line, act }: WayOptions) => (
  <button
    type="button"
    className="take-back"
    disabled={line === undefined}
    onClick={act}
    data-says={line === undefined ? undefined : `${label}: ${line}`}
    aria-label={line === undefined ? label : `${label}: ${line}`}
    aria-keyshortcuts={keys}
  >
    <svg viewBox="0 0 16 16" aria-hidden="true" data-way={label}>
      <path d="M6 3 2.5 6.5 6 10M3 6.5h6.5a3.5 3.5 0 0 1 0 7H7" />
    </svg>
  </button>
);
