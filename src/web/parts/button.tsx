import type { ButtonHTMLAttributes, ReactNode } from "react";
import { KeyHint } from "./key-hint.tsx";
import "./button.css";

interface ButtonOptions extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, "className"> {
  /** strong: the one next step of a page; plain: the rest; bare: inside a line of text; look: takes something away. */
  readonly weight?: "strong" | "plain" | "bare" | "look";
  /** The key that does the same, shown beside the words. */
  readonly hint?: string;
  readonly children: ReactNode;
}

/** A button in words. */
export function Button({ weight = "plain", hint, children, type = "button", ...others }: ButtonOptions) {
  return (
    <button type={type} className={`button button-${weight}`} aria-keyshortcuts={hint} {...others}>
      {children}
      {hint !== undefined && <KeyHint keys={hint} />}
    </button>
  );
}
