import { type ReactNode, useEffect, useId, useRef } from "react";
import { useGround } from "./ground.ts";
import "./dialog.css";

interface DialogOptions {
  readonly title: string;
  /** Absent where the person has to answer first. */
  readonly close?: () => void;
  /** side: a drawer at the right edge. */
  readonly place?: "middle" | "side";
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** The first field of a page; of choices that exclude each other the one that stands. */
function firstField(dialog: HTMLElement | null): HTMLElement | null | undefined {
  const first = dialog?.querySelector<HTMLElement>(":is(input, select, textarea):enabled");
  if (!(first instanceof HTMLInputElement) || first.type !== "radio") return first;
  return dialog?.querySelector<HTMLElement>(`input[name="${CSS.escape(first.name)}"]:checked`) ?? first;
}

/** A page above the page: its first field has the focus, which it keeps and gives back; Escape closes it. */
export function Dialog({ title, close, place = "middle", wide = false, children }: DialogOptions) {
  const element = useRef<HTMLDialogElement>(null);
  const heading = useId();
  const ground = useGround();
  useEffect(() => {
    const dialog = element.current;
    const before = document.activeElement;
    dialog?.showModal();
    firstField(dialog)?.focus();
    return () => {
      dialog?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={element}
      className={`dialog dialog-${place}`}
      data-wide={wide}
      data-room={ground}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        close?.();
      }}
      onClick={(event) => event.target === element.current && close?.()}
      onKeyDown={(event) => event.key === "Escape" && event.stopPropagation()}
    >
      <div className="dialog-page">
        <header className="dialog-head">
          <h2 id={heading}>{title}</h2>
          {close && (
            <button type="button" className="dialog-close" onClick={close} aria-label="Close">
              <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M3 3l10 10M13 3L3 13" />
              </svg>
            </button>
          )}
        </header>
        {children}
      </div>
    </dialog>
  );
}
