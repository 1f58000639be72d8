import { useQuery } from "@tanstack/react-query";
import { type KeyboardEvent, type RefObject, useEffect, useId, useRef } from "react";
import { createPortal } from "react-dom";
import { useLocation } from "wouter";
import { emergencyNames } from "../../../record/clinic-rules.ts";
import { emergencyGuide } from "../../../record/emergency/emergency-guide.ts";
import type { Settings } from "../../../record/settings.ts";
import { Button } from "../../parts/button.tsx";
import { emergencyKey } from "../../parts/emergency-link.tsx";
import {
  chooseEmergency,
  type EmergencyPlace,
  leaveEmergency,
  openEmergency,
  shutEmergency,
  useEmergencyPlace,
} from "../../parts/emergency-place.ts";
import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { CallFirst } from "./call-first.tsx";
import "./emergency.css";
import { EmergencySheet } from "./emergency-sheet.tsx";

const guides = emergencyNames.map(emergencyGuide);

/** The emergency page above everything else; it needs nothing of the server. */
export function EmergencyRoom() {
  const place = useEmergencyPlace();
  useShortcut(emergencyKey, "Everywhere", "Emergency, and back from it", () =>
    place === "shut" ? openEmergency() : shutEmergency(),
  );
  return place === "shut" ? null : <Open place={place} />;
}

type Shown = Exclude<EmergencyPlace, "shut">;

function Open({ place }: { readonly place: Shown }) {
  const element = useRef<HTMLDialogElement>(null);
  const heading = useId();
  const [, go] = useLocation();
  const { data: settings } = useQuery<Settings>({ queryKey: ["settings"], enabled: false });
  useTop(element, place);
  const toSettings = () => leaveEmergency(() => go("/settings", { replace: true }));
  const clinic = settings?.emergency;
  const calls = { clinic, unread: settings === undefined };
  return (
    <>
      <dialog
        ref={element}
        className="emergency"
        tabIndex={-1}
        aria-labelledby={heading}
        onCancel={(event) => {
          event.preventDefault();
          shutEmergency();
        }}
        onKeyDown={pressed}
      >
        <header className="emergency-head">
          <h1 id={heading}>Emergency</h1>
          <Button onClick={() => window.print()} hint="p">
            {place === "choice" ? "Print all four" : "Print this page"}
          </Button>
          <Button weight="strong" onClick={shutEmergency} hint="Escape">
            Back
          </Button>
        </header>
        <div className="emergency-beside">
          <CallFirst {...calls} toSettings={toSettings} />
          {place !== "choice" && <Choice place={place} />}
        </div>
        <div className="emergency-told">
          {place === "choice" ? (
            <>
              <p className="emergency-ask">What has happened?</p>
              <Choice place={place} />
            </>
          ) : (
            <EmergencySheet guide={emergencyGuide(place)} protocol={clinic?.protocols[place]} />
          )}
        </div>
      </dialog>
      {createPortal(<Printed place={place} {...calls} />, document.body)}
    </>
  );
}

/** Lies above everything, takes the keys, and gives them back; a sheet begins at its top. */
function useTop(element: RefObject<HTMLDialogElement | null>, place: Shown): void {
  useEffect(() => {
    const dialog = element.current;
    const before = document.activeElement;
    dialog?.showModal();
    // No button has the focus: a key pressed in haste does nothing that was not meant.
    dialog?.focus();
    return () => {
      dialog?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, [element]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another sheet is another place to begin
  useEffect(() => {
    element.current?.scrollTo(0, 0);
  }, [element, place]);
}

/** Escape goes back and reaches nothing below; a digit chooses, p prints. */
function pressed(event: KeyboardEvent): void {
  const name = emergencyNames[Number.parseInt(event.key, 10) - 1];
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  if (event.key === "Escape") event.stopPropagation();
  if (name !== undefined) chooseEmergency(name);
  if (event.key.toLowerCase() === "p") window.print();
}

const Choice = ({ place }: { readonly place: Shown }) => (
  <nav className="emergency-choice" aria-label="What has happened">
    {guides.map(({ name, title }, index) => (
      <button
        key={name}
        type="button"
        aria-current={name === place}
        aria-keyshortcuts={String(index + 1)}
        onClick={() => chooseEmergency(name)}
      >
        <KeyHint keys={String(index + 1)} />
        {title}
      </button>
    ))}
  </nav>
);

interface PrintedOptions {
  readonly place: Shown;
  readonly clinic: Settings["emergency"];
  readonly unread: boolean;
}

/** What goes to paper: a page for each emergency, the clinic's numbers at its top. */
const Printed = ({ place, clinic, unread }: PrintedOptions) => (
  <div className="emergency-paper" aria-hidden="true">
    {guides
      .filter(({ name }) => place === "choice" || name === place)
      .map((guide) => (
        <section key={guide.name}>
          <CallFirst {...{ clinic, unread }} />
          <EmergencySheet guide={guide} protocol={clinic?.protocols[guide.name]} />
        </section>
      ))}
  </div>
);
