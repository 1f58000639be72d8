import { notPlain } from "../../../../pages/consent/plain-reason.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";

/** The reason in words for the patient, and what in it a patient may not understand. */
export function SaidPlainly() {
  const written = useField("saidPlainly", "Because").value;
  const because = useField("because", "Because").value;
  const text = typeof written === "string" ? written : "";
  const reason = typeof because === "string" ? because : "";
  return (
    <>
      <TextField at="saidPlainly" label="Because, in words for the patient" prose optional />
      <p className="quiet plan-note field" data-wide="true">
        {text.trim() === "" ? withoutText(reason) : sayNotPlain(text)}
      </p>
    </>
  );
}

function withoutText(because: string): string {
  if (because.trim() === "") return "The consent page leaves lines for the reason until one is written.";
  if (notPlain(because) === undefined) return "Left empty: the consent page prints the reason above; it is plain.";
  return "Left empty: the consent page leaves lines for the reason, as the one above is not in words for a patient.";
}

function sayNotPlain(text: string): string {
  const found = notPlain(text);
  if (found === undefined) return "● Plain: short sentences without a word of the trade.";
  const words = found.jargon.length === 0 ? [] : [`words of the trade: ${found.jargon.join(", ")}`];
  const hard = found.grade === undefined ? [] : [`sentences for school year ${Math.round(found.grade)}, 7 is asked`];
  return `◇ A patient may not follow: ${[...words, ...hard].join("; ")}.`;
}
