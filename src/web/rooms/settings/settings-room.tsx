import { type FormEvent, type ReactNode, useState } from "react";
import { Link } from "wouter";
import type { Settings } from "../../../record/settings.ts";
import { notationWords, roleWords } from "../../../record/words/case-words.ts";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Button } from "../../parts/button.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useKeepSettings, useSession, useSettings } from "../../record/readings.ts";
import { clickSigmaOrigin } from "../../words/click-sigma-words.ts";
import { sentenceInWords } from "../../words/value-words.ts";
import { Choice } from "../first-start/first-start.tsx";
import "./settings-room.css";

/** What the person set once. */
export function SettingsRoom() {
  useTitle("Settings");
  const settings = useSettings();
  return (
    <>
      <PageHead>
        <h1 className="settings-title">Settings</h1>
      </PageHead>
      <main className="settings-page">{settings.data && <SettingsForm settings={settings.data} />}</main>
    </>
  );
}

function SettingsForm({ settings }: { readonly settings: Settings }) {
  const [draft, setDraft] = useState({
    ...settings,
    clickSigmaPx: String(settings.clickSigmaPx),
    stopShortMm: String(settings.stopShortMm),
  });
  const keep = useKeepSettings();
  const announce = useAnnounce();
  const session = useSession();
  const change = (part: Partial<typeof draft>) => setDraft((before) => ({ ...before, ...part }));
  const numbers = [draft.clickSigmaPx, draft.stopShortMm].map((text) => Number(text.replace(",", ".")));
  const [clickSigmaPx = 0, stopShortMm = 0] = numbers;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate({ ...draft, clickSigmaPx, stopShortMm }, { onSuccess: () => announce("Settings saved") });
  };
  return (
    <form className="settings-form" onSubmit={submit}>
      <label>
        <span className="field-label">Name under which changes are recorded</span>
        <input className="field-line" value={draft.who} onChange={({ target }) => change({ who: target.value })} />
      </label>
      <Choice label="Part" words={roleWords} value={draft.role} choose={(role) => change({ role })} />
      <Choice
        label="Notation of teeth"
        words={notationWords}
        value={draft.notation}
        choose={(notation) => change({ notation })}
      />
      <Figure
        label="Click error"
        unit="px"
        says="How far a click of yours misses, as a standard deviation per axis. Every measure on a film carries it."
        origin={<Origin settings={settings} />}
        value={draft.clickSigmaPx}
        change={(text) => change({ clickSigmaPx: text })}
      />
      <Figure
        label="Stop short of the apex"
        unit="mm"
        says="How far short of the radiographic apex a length stops; 0.5 is common practice."
        value={draft.stopShortMm}
        change={(text) => change({ stopShortMm: text })}
      />
      {keep.error && <SayRefusal of={keep.error} />}
      <Button
        type="submit"
        weight="strong"
        disabled={keep.isPending || draft.who.trim() === "" || numbers.some(Number.isNaN)}
      >
        Save
      </Button>
      {session.data && (
        <p className="quiet settings-where">
          Canalog {session.data.version}. The record is kept in {session.data.home}.
        </p>
      )}
    </form>
  );
}

interface FigureOptions {
  readonly label: string;
  readonly unit: string;
  readonly says: string;
  readonly origin?: ReactNode;
  readonly value: string;
  readonly change: (text: string) => void;
}

/** Where the click error came from, and the way to measure it. */
const Origin = ({ settings }: { readonly settings: Settings }) => (
  <span className="settings-origin">
    {sentenceInWords(clickSigmaOrigin(settings))}.{" "}
    {settings.clickSigmaFrom === undefined ? (
      <Link href="/calibration">Measure it</Link>
    ) : (
      <Link href={`/calibration/clicks/${settings.clickSigmaFrom.exerciseId}`}>Its exercise</Link>
    )}
  </span>
);

const Figure = ({ label, unit, says, origin, value, change }: FigureOptions) => (
  <div className="settings-figure">
    <label>
      <span className="field-label">{label}</span>
      <span className="field-number">
        <input
          className="field-line"
          inputMode="decimal"
          value={value}
          onChange={({ target }) => change(target.value)}
        />
        <span className="field-unit">{unit}</span>
      </span>
      <span className="quiet">{says}</span>
    </label>
    {origin}
  </div>
);
