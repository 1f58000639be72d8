import { useQueryClient } from "@tanstack/react-query";
import { type ReactNode, useCallback, useEffect, useState } from "react";
import type { Settings } from "../../../record/settings.ts";
import { type SectionName, sectionNames } from "../../../record/settings-sections.ts";
import { KeyHint } from "../../parts/key-hint.tsx";
import { Opening } from "../../parts/opening.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useTitle } from "../../parts/use-title.ts";
import { useSession, useSettings } from "../../record/readings.ts";
import { AirLimits } from "./air-limits.tsx";
import { AnaestheticLimits } from "./anaesthetic-limits.tsx";
import { EmergencyFields } from "./emergency-fields.tsx";
import { FilmsFields } from "./films-fields.tsx";
import { IrrigationFields } from "./irrigation-fields.tsx";
import { RoomSection } from "./room-section.tsx";
import "./settings-room.css";
import { sectionTitles } from "./section-titles.ts";
import { SettingsSection } from "./settings-section.tsx";
import { YouFields } from "./you-fields.tsx";

/** What the person and the clinic set once. */
export function SettingsRoom() {
  useTitle("Settings");
  const { data, error, refetch } = useSettings();
  useReadAnew();
  return (
    <>
      <PageHead>
        <h1 className="settings-title">Settings</h1>
      </PageHead>
      {data && <Sections settings={data} />}
      {!data && (error ? <SayRefusal of={error} retry={() => void refetch()} whole /> : <Opening says="Opening" />)}
    </>
  );
}

/** Another window may have kept something since. */
function useReadAnew(): void {
  const client = useQueryClient();
  useEffect(() => void client.invalidateQueries({ queryKey: ["settings"] }), [client]);
}

function Sections({ settings }: { readonly settings: Settings }) {
  const session = useSession();
  const [unsaved, setUnsaved] = useState<readonly SectionName[]>([]);
  const tellChanged = useCallback(
    (name: SectionName, isChanged: boolean) =>
      setUnsaved((before) => [...before.filter((one) => one !== name), ...(isChanged ? [name] : [])]),
    [],
  );
  return (
    <div className="settings-columns">
      <SectionIndex unsaved={unsaved} />
      <main className="settings-page">
        {sectionNames.map((name) => (
          <SettingsSection key={name} {...{ name, settings, tellChanged, says: saysOf(name) }}>
            {fieldsOf(name, settings)}
          </SettingsSection>
        ))}
        {session.data && (
          <p className="quiet settings-where">
            Canalog {session.data.version}. The record is kept in {session.data.home}.
          </p>
        )}
      </main>
    </div>
  );
}

function SectionIndex({ unsaved }: { readonly unsaved: readonly SectionName[] }) {
  return (
    <nav className="settings-index" aria-label="Sections of the settings">
      <ol>
        {sectionNames.map((name, index) => (
          <IndexLine key={name} name={name} digit={String(index + 1)} isUnsaved={unsaved.includes(name)} />
        ))}
      </ol>
    </nav>
  );
}

interface IndexLineOptions {
  readonly name: SectionName;
  readonly digit: string;
  readonly isUnsaved: boolean;
}

function IndexLine({ name, digit, isUnsaved }: IndexLineOptions) {
  const go = () => {
    const title = document.getElementById(`${name}-title`);
    title?.focus({ preventScroll: true });
    title?.scrollIntoView({ block: "start" });
  };
  useShortcut(digit, "Settings", `Section: ${sectionTitles[name].toLowerCase()}`, go);
  return (
    <li>
      <a href={`#${name}`} className="settings-index-line" onClick={go} aria-keyshortcuts={digit}>
        <KeyHint keys={digit} />
        <span>{sectionTitles[name]}</span>
        {isUnsaved && <span className="settings-state">◆ not saved</span>}
      </a>
    </li>
  );
}

const copies =
  "A visit takes a copy when it begins. What you change here changes no past visit; an open visit takes it by a press of its own.";

function saysOf(name: SectionName): string {
  switch (name) {
    case "you":
      return "Who writes on this machine, and how a tooth is written.";
    case "films":
      return "What measures on films rest on.";
    case "room":
      return `The room in which solvents are used. Nothing is filled in for you: without a room there is no sum of its air. ${copies}`;
    case "air":
      return `Limits that bind where you work, beside the published ones, which always count. Visits keep a copy.`;
    case "anaesthetic":
      return `Whose limits count for a visit's local anaesthetic. Visits keep a copy.`;
    case "irrigation":
      return `What your clinic wants of irrigants and needles. What stays empty is taken as it says. Visits keep a copy.`;
    case "emergency":
      return "What the emergency page shows first: your own calls and protocols go before the usual first steps. They are read at the moment of need, so every machine of the clinic needs them.";
  }
}

function fieldsOf(name: SectionName, settings: Settings): ReactNode {
  switch (name) {
    case "you":
      return <YouFields />;
    case "films":
      return <FilmsFields settings={settings} />;
    case "room":
      return <RoomSection />;
    case "air":
      return <AirLimits />;
    case "anaesthetic":
      return <AnaestheticLimits />;
    case "irrigation":
      return <IrrigationFields />;
    case "emergency":
      return <EmergencyFields />;
  }
}
