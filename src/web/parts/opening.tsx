import { useGround } from "./ground.ts";
import "./opening.css";

interface OpeningOptions {
  /** What is being opened, as "Opening the case". */
  readonly says?: string;
}

/** A page before it is there: blank at first, and after a moment a word, so that nobody waits before nothing. */
export function Opening({ says = "Opening" }: OpeningOptions) {
  const ground = useGround();
  return (
    <main className="opening" aria-busy="true" data-room={ground}>
      <p className="opening-word">{says}</p>
    </main>
  );
}
