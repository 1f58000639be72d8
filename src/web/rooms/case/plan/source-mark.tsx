import { sourceInWords } from "../../../words/value-words.ts";

interface SourceMarkOptions {
  readonly source: string;
  readonly mark: string;
}

const markWords: Readonly<Record<string, string>> = { seen: "seen", memory: "from memory" };

/** Where a value comes from, in quiet letters: the study by name and year, and whether it was read or recalled. */
export const SourceMark = ({ source, mark }: SourceMarkOptions) => (
  <span className="plan-source">
    {markWords[mark] === undefined ? sourceInWords(source) : `${sourceInWords(source)}, ${markWords[mark]}`}
  </span>
);
