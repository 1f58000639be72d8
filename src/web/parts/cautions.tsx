import { sentenceInWords } from "../words/value-words.ts";
import "./cautions.css";

interface CautionsOptions {
  readonly topic: string;
  readonly cautions: readonly string[];
}

/** What speaks against an entry's numbers; in the accent only where something is to be done first. */
export const Cautions = ({ topic, cautions }: CautionsOptions) =>
  cautions.length === 0 ? null : (
    <ul className="cautions" data-look={isActedOn(topic)} aria-label="Cautions">
      {cautions.map((caution) => (
        <li key={caution}>{sentenceInWords(caution)}</li>
      ))}
    </ul>
  );

/** A doubtful scale or working length is mended before anything rests on it; other cautions are read beside their number. */
export const isActedOn = (topic: string): boolean => topic === "calibrate" || topic === "workingLength";
