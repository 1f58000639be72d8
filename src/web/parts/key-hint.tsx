import "./key-hint.css";

/** A key as it stands on the keyboard; for the eye only, the key itself is announced by its button. */
export const KeyHint = ({ keys }: { readonly keys: string }) => (
  <span className="key-hint" aria-hidden="true">
    {nameOfKeys(keys)}
  </span>
);

function nameOfKeys(keys: string): string {
  if (keys === "+") return keys;
  return keys === " " ? "Space" : keys.replace("Control", "Ctrl").replaceAll("+", " ");
}
