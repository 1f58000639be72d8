import { useEffect, useRef, useState } from "react";
import { attemptsAgainstRules, hasStopRule, minutesBetween } from "../../../../record/attempts-against-rules.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { removalToolWords } from "../../../../record/words/removal-words.ts";
import { useAnnounce } from "../../../parts/announcer.tsx";
import { Button } from "../../../parts/button.tsx";
import { Dialog } from "../../../parts/dialog.tsx";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { Within } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { clockInWords, minutesInWords, ruleInWords, rulesAloud, standingMarks } from "./clock-in-words.ts";
import { useRemovalInHand } from "./removal-in-hand.ts";

type Attempt = BodyOf<"removal">["attempts"][number];

/** The clock of the attempts: one press starts it, one stops it and writes the attempt; its start stands in the record. */
export function AttemptClock() {
  const { now, attempts, running, rules, readOnly } = useRemovalInHand();
  const [asks, setAsks] = useState(false);
  const ticking = useTicking(now.running !== undefined);
  const number = now.attempts.length + 1;
  const begin = () => {
    const last = now.attempts.at(-1);
    const start = { since: new Date().toISOString(), tool: last?.tool ?? "ultrasonicTip", tip: last?.tip ?? "" };
    running.write(start, `attempt ${number} started`, "now");
    setAsks(false);
  };
  const stop = () => {
    if (now.running === undefined) return;
    const { since, tool, tip } = now.running;
    const minutes = minutesBetween(since, new Date().toISOString());
    const attempt: Attempt = { at: since, minutes, tool, tip, moved: "notRecorded", note: "" };
    attempts.write([...now.attempts, attempt], `attempt ${number}, ${minutesInWords(minutes)}`, "typing");
    running.write(undefined, "stopped", "now");
  };
  const setFirst = () => {
    setAsks(false);
    if (now.stopRules === undefined) rules.write({ setAt: new Date().toISOString() }, "set now", "now");
  };
  const press = () => {
    if (readOnly) return;
    if (now.running !== undefined) stop();
    else if (now.attempts.length === 0 && !hasStopRule(now)) setAsks(true);
    else begin();
  };
  useShortcut("k", "Case", "Start or stop the clock of an attempt", press);
  return (
    <div className="removal-clock" data-runs={now.running !== undefined}>
      <div className="removal-clock-face">
        <span className="removal-clock-time" role="timer" aria-label={`Attempt ${number}`}>
          {now.running === undefined ? "0:00" : clockInWords(now.running.since, ticking)}
        </span>
        {!readOnly && (
          <Button weight="strong" hint="k" onClick={press}>
            {now.running === undefined ? `Start attempt ${number}` : `Stop attempt ${number}`}
          </Button>
        )}
      </div>
      <div className="removal-clock-told">
        {now.running === undefined ? (
          <span className="quiet">
            The clock stands. Its start is kept in the record: a closed window loses nothing.
          </span>
        ) : (
          <Within at="running" of={`attempt ${number}`}>
            <div className="fields">
              <SelectField at="tool" label="Tool" words={removalToolWords} />
              <TextField at="tip" label="Tip: kind, size, setting" />
            </div>
          </Within>
        )}
        <AgainstRules at={ticking} />
      </div>
      {asks && (
        <Dialog title="No stop rules are set" close={() => setAsks(false)}>
          <p>Rules that stand before the first attempt are easier to keep. They are asked for this once.</p>
          <div className="removal-line">
            <Button weight="strong" onClick={setFirst}>
              Set them first
            </Button>
            <Button onClick={begin}>Start without rules</Button>
          </div>
        </Dialog>
      )}
    </div>
  );
}

/** The running total against each rule; said aloud when it comes near one and when it reaches it. */
function AgainstRules({ at }: { readonly at: number }) {
  const { now } = useRemovalInHand();
  const announce = useAnnounce();
  const running = now.running && minutesBetween(now.running.since, new Date(at).toISOString());
  const total = attemptsAgainstRules(now, running);
  const said = useRef(total.standing);
  const aloud = rulesAloud(total);
  useEffect(() => {
    if (total.standing !== said.current && aloud !== "") announce(aloud);
    said.current = total.standing;
  }, [total.standing, aloud, announce]);
  return (
    <ul className="removal-rules-now" aria-label="Against the stop rules">
      <li>
        {minutesInWords(total.minutes)} in all, {total.attempts} {total.attempts === 1 ? "attempt" : "attempts"}
      </li>
      {total.rules.map((rule) => (
        <li key={rule.rule} data-standing={rule.standing}>
          <span aria-hidden="true">{standingMarks[rule.standing]}</span> {ruleInWords(rule)}
        </li>
      ))}
    </ul>
  );
}

/** The moment that is now, once a second while the clock runs. */
function useTicking(runs: boolean): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    if (!runs) return undefined;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [runs]);
  return now;
}
