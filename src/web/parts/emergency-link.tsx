import { KeyHint } from "./key-hint.tsx";
import "./emergency-link.css";
import { hashOf, openEmergency } from "./emergency-place.ts";

/** The key that opens the emergency page, also while somebody types and above an open dialog. */
export const emergencyKey = "F8";

/** One press to the emergency page; it stands in every head. */
export const EmergencyLink = () => (
  <a
    href={hashOf("choice")}
    className="emergency-link"
    aria-keyshortcuts={emergencyKey}
    onClick={(event) => {
      event.preventDefault();
      openEmergency();
    }}
  >
    <svg viewBox="0 0 16 16" aria-hidden="true">
      <path d="M8 1.5L14.5 8L8 14.5L1.5 8Z" />
      <path d="M8 5v3.6M8 10.6v.4" />
    </svg>
    Emergency
    <KeyHint keys={emergencyKey} />
  </a>
);
