import type { Part } from "../../../record/parts.ts";
import { dayInWords } from "../../parts/days-in-words.ts";
import "./looked-at.css";
import { MomentEmblem } from "./moment-emblem.tsx";
import type { Moment } from "./spine/spine-moments.ts";

interface LookedAtOptions {
  readonly moment: Moment;
  readonly parts: readonly Part[];
  /** What the page is called that is open under it. */
  readonly stays: string;
}

/** The tooth as another moment left it, at the head of the page that stays open, while the spine is dragged along. */
export const LookedAt = ({ moment, parts, stays }: LookedAtOptions) => (
  <div className="looked-at">
    <section className="looked-at-sheet" aria-label={`The canals at: ${moment.title}`}>
      <header className="moment-head">
        <h2>{moment.title}</h2>
        <span className="quiet">{[dayInWords(moment.day), moment.when].filter((text) => text !== "").join(" · ")}</span>
      </header>
      <MomentEmblem parts={parts} day={moment.day} />
      <p className="quiet">Let go or Enter opens this moment; Escape stays at {stays}.</p>
    </section>
  </div>
);
