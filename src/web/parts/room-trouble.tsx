import { useEffect, useRef } from "react";
import { Link } from "wouter";
import { Button } from "./button.tsx";
import { EmergencyLink } from "./emergency-link.tsx";
import type { Ground } from "./ground.ts";
import "./say-refusal.css";

interface RoomTroubleOptions {
  readonly error: unknown;
  /** Of the room that could not be drawn. */
  readonly ground: Ground;
  readonly openAgain: () => void;
}

/** Stands where a room broke: what happened in calm words, that nothing recorded is lost, and the two ways on. */
export function RoomTrouble({ error, ground, openAgain }: RoomTroubleOptions) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <main className="room-trouble" data-room={ground}>
      <div className="emergency-corner">
        <EmergencyLink />
      </div>
      <div className="say-whole">
        <h1 ref={heading} tabIndex={-1}>
          This page stopped
        </h1>
        <div className="say" role="alert">
          <p>{troubleInWords(error)}</p>
          <details className="quiet">
            <summary>For who mends it</summary>
            {error instanceof Error ? error.message : String(error)}
          </details>
        </div>
        <p>What was recorded is kept; nothing of it depends on this page.</p>
        <p className="room-trouble-ways">
          <Button weight="strong" onClick={openAgain}>
            Open again
          </Button>
          <Link href="/" className="button">
            Go to the logbook
          </Link>
        </p>
      </div>
    </main>
  );
}

/** Whether a piece of the program itself could not be fetched, as after it was ended or renewed. */
export const isMissingPiece = (error: unknown): boolean =>
  error instanceof Error && /dynamically imported module|importing a module|preload CSS/i.test(error.message);

/** What stopped a room, for who reads it. */
export const troubleInWords = (error: unknown): string =>
  isMissingPiece(error)
    ? "A piece of the program could not be fetched: it was ended or renewed since this window was opened."
    : "The program met a fault of its own while it drew this page.";
