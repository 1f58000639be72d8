import type { KeyboardEvent } from "react";
import { Button } from "../../../../parts/button.tsx";
import { Dialog } from "../../../../parts/dialog.tsx";
import { inTextField } from "../../../../parts/shortcuts.ts";
import type { DialogOptions } from "./dialog-options.ts";
import { AmountField, ChoiceOfEntry } from "./entry-fields.tsx";
import {
  beforeBurst,
  burstInWords,
  burstTyped,
  coolantWords,
  fragmentAlloyWords,
  readBursts,
  workedOnWords,
} from "./read-burst.ts";
import type { Typed } from "./read-typed.ts";
import { useStopwatch } from "./stopwatch.ts";
import { type Entry, useTyped } from "./use-entry.ts";
import { minuteTyped } from "./use-stock.ts";
import { useVisit } from "./use-visit.ts";
import "../../entry/quick-entry.css";
import "./entry-shell.css";

/** Ultrasound in the tooth by a stopwatch: one key starts and stops it, each burst is recorded as it ends, pauses are counted. */
export function UltrasoundDialog({ close, atMin }: DialogOptions) {
  const { visitId, visit, record } = useVisit("Burst noted");
  const before = visit.ultrasonics ?? [];
  const watch = useStopwatch(visitId);
  const fields = useTyped(() => ({ ...burstTyped(before.at(-1)), atMin: minuteTyped(atMin) }));
  const { typed } = fields;
  const entry = { ...fields, faults: readBursts(typed, before).faults };
  const save = (now: Typed): boolean => {
    const { row } = readBursts(now, before);
    const last = row?.at(-1);
    if (row === undefined || last === undefined) {
      fields.sayAll();
      fields.lay(now);
      return false;
    }
    record({ ...visit, ultrasonics: [...row] }, burstInWords(last));
    fields.empty({ ...burstTyped(last), atMin: minuteTyped(atMin) });
    return true;
  };
  const start = () => {
    if (Object.keys(beforeBurst(typed)).length > 0) return fields.sayAll();
    const rested = watch.start();
    fields.lay({
      seconds: "",
      atMin: minuteTyped(atMin),
      ...(rested === undefined ? {} : { restSeconds: String(rested) }),
    });
  };
  const stop = () => save({ ...typed, seconds: String(watch.stop()) });
  const turn = () => (watch.runs ? void stop() : start());
  const enter = () => {
    if (save(typed)) watch.forget();
  };
  const leave = () => {
    if (!watch.runs || stop()) close();
  };
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const act = event.key === "Enter" ? enter : event.key === "s" ? turn : undefined;
    if (act === undefined || (event.key === "s" && inTextField(event.target))) return;
    if (event.key === "Enter" && (watch.runs || event.target instanceof HTMLButtonElement)) return;
    event.preventDefault();
    act();
  };
  return (
    <Dialog title="Ultrasound" close={leave} wide>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the fields inside */}
      <div className="entry material-entry" onKeyDown={press}>
        <Conditions entry={entry} canals={visit.canals.map(({ canal }) => canal)} />
        <div className="burst-watch" data-runs={watch.runs}>
          <span className="burst-time" role="timer" aria-label={watch.runs ? "Working" : "Pause"}>
            {watchInWords(watch)}
          </span>
          <Button weight="strong" hint="s" onClick={turn}>
            {watch.runs ? "Stop and record" : `Start burst ${before.length + 1}`}
          </Button>
        </div>
        {!watch.runs && (
          <details open={(typed.seconds ?? "") !== ""}>
            <summary>Timed by another clock</summary>
            <div className="fields">
              <AmountField {...{ entry, at: "seconds", label: "Worked for", unit: "s", step: 5 }} />
              <AmountField {...{ entry, at: "atMin", label: "At minute", unit: "min" }} />
            </div>
            <Button hint="Enter" onClick={enter}>
              Record the burst
            </Button>
          </details>
        )}
        {before.length > 0 && (
          <div className="fields">
            <AmountField {...{ entry, at: "restSeconds", label: "Pause since the burst before", unit: "s" }} />
          </div>
        )}
        <BurstsSoFar bursts={before.map(burstInWords)} />
        <footer className="dialog-feet entry-feet">
          <Button hint="Escape" onClick={leave}>
            {watch.runs ? "Stop, record and close" : "Done"}
          </Button>
        </footer>
      </div>
    </Dialog>
  );
}

function watchInWords({ runs, seconds, rested }: ReturnType<typeof useStopwatch>): string {
  if (runs) return `${(seconds ?? 0).toFixed(1)} s`;
  return rested === undefined ? "0.0 s" : `pause ${rested.toFixed(0)} s`;
}

function Conditions({ entry, canals }: { readonly entry: Entry; readonly canals: readonly string[] }) {
  return (
    <>
      <ChoiceOfEntry at="on" label="On" entry={entry} words={workedOnWords} />
      {entry.typed.on === "fragment" && (
        <ChoiceOfEntry at="alloy" label="Alloy of the fragment" entry={entry} words={fragmentAlloyWords} />
      )}
      <ChoiceOfEntry at="coolant" label="Cooled by" entry={entry} words={coolantWords} />
      {canals.length > 0 && (
        <ChoiceOfEntry
          {...{ at: "canal", label: "Canal", entry }}
          words={Object.fromEntries(canals.map((name) => [name, name]))}
        />
      )}
      <div className="fields">
        <AmountField {...{ entry, at: "power", label: "Power, as the device shows it", step: 1 }} />
      </div>
    </>
  );
}

const BurstsSoFar = ({ bursts }: { readonly bursts: readonly string[] }) =>
  bursts.length === 0 ? null : (
    <ol className="bursts" aria-label="Bursts so far">
      {bursts.map((burst, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: bursts have no other name than their place
        <li key={index}>
          {index + 1}. {burst}
        </li>
      ))}
    </ol>
  );
