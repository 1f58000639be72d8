import type { KeyboardEvent } from "react";
import { useRef } from "react";
import { replyWords } from "../../../../record/words/finding-words.ts";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import type { BodyPath } from "../../../record/body-path.ts";
import { KeyCell } from "../forms/key-cell.tsx";

const signs = { "-": "none", "+": "normal" } as const;

/** A reply to cold or heat, and how many seconds it outlasts: digits that are typed on the reply are its seconds. */
export function ThermalCell({ at, label }: { readonly at: BodyPath; readonly label: string }) {
  const seconds = useRef<HTMLInputElement>(null);
  const toSeconds = (event: KeyboardEvent): boolean => {
    if (!/^\d$/.test(event.key) || seconds.current === null) return false;
    // The digit itself goes into the field that has the focus when the key comes through.
    seconds.current.focus();
    seconds.current.select();
    event.stopPropagation();
    return true;
  };
  return (
    <div className="thermal-cell">
      <KeyCell at={`${at}.reply`} label={label} words={replyWords} signs={signs} onKey={toSeconds} />
      <NumberField
        ref={seconds}
        at={`${at}.lingersSeconds`}
        label={`Seconds after ${label.toLowerCase()}`}
        unit="s"
        bare
      />
      <span className="field-unit" aria-hidden="true">
        s
      </span>
    </div>
  );
}
