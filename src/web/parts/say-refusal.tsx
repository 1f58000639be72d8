import { Link } from "wouter";
import type { Refused } from "../record/api.ts";
import { wordsOfName } from "../words/words-of-name.ts";
import { Button } from "./button.tsx";
import { EmergencyLink } from "./emergency-link.tsx";
import "./say-refusal.css";

interface SayRefusalOptions {
  readonly of: Refused;
  readonly retry?: () => void;
  /** The whole window has nothing else to show. */
  readonly whole?: boolean;
}

/** Says what could not be done and offers the way out. */
export function SayRefusal({ of: refused, retry, whole = false }: SayRefusalOptions) {
  const says = (
    <div className="say" role="alert">
      <p>{refused.message}</p>
      {refused.faults.length > 0 && (
        <ul>
          {refused.faults.map(({ path, says }) => (
            <li key={path + says}>{[nameOfPlace(path), says].filter((text) => text !== "").join(": ")}</li>
          ))}
        </ul>
      )}
      {retry && <Button onClick={retry}>Try again</Button>}
    </div>
  );
  if (!whole) return says;
  return (
    <main className="say-whole">
      <div className="emergency-corner">
        <EmergencyLink />
      </div>
      <h1>This can't be shown</h1>
      {says}
      <p>
        <Link href="/">Go to the logbook</Link>
      </p>
    </main>
  );
}

/** The last field of a path in words: `case.birthYear` as Birth year; nothing for a place in a list. */
const nameOfPlace = (path: string): string => wordsOfName(/(?:^|\.)([a-zA-Z]+)$/.exec(path)?.[1] ?? "");
