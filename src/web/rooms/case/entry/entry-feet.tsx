import type { ReactNode } from "react";
import { Button } from "../../../parts/button.tsx";
import "./quick-entry.css";

interface EntryFeetOptions {
  /** Absent while something is missing. */
  readonly record: (() => void) | undefined;
  readonly close: () => void;
  /** It is recorded although something was asked. */
  readonly isLook?: boolean | undefined;
  /** The words of the button that records. */
  readonly children: ReactNode;
}

/** The end of an entry at the chair: Enter records it, Escape leaves it. */
export const EntryFeet = ({ record, close, isLook = false, children }: EntryFeetOptions) => (
  <footer className="dialog-feet entry-feet">
    <Button weight={isLook ? "look" : "strong"} hint="Enter" disabled={record === undefined} onClick={record}>
      {children}
    </Button>
    <Button hint="Escape" onClick={close}>
      Leave it
    </Button>
  </footer>
);
