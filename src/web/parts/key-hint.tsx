import "./key-hint.css";

/** A key as it stands on the keyboard; for the eye only, the key itself is announced by its button. */
export const KeyHint = ({ keys }: { readonly keys: string }) => (
  <span className="key-hint" aria-hidden="true">
    {nameOfKeys(keys)}
  </span>
);

const names: Readonly<Record<string, string>> = { " ": "Space", Control: "Ctrl", ArrowLeft: "Arrows", Escape: "Esc" };

/** Letters are capitals, as keyboards have them. */
const nameOfKeys = (keys: string): string =>
  keys === "+"
    ? keys
    : keys
        .split("+")
        .map((key) => names[key] ?? (key.length === 1 ? key.toUpperCase() : key))
        .join(" ");
