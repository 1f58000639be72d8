import type { InputHTMLAttributes } from "react";
import { dayInWords } from "../days-in-words.ts";
import "./day-input.css";

interface DayInputOptions extends Omit<InputHTMLAttributes<HTMLInputElement>, "type" | "value" | "className"> {
  readonly value: string;
}

/** A day that is read as `13 Jan 2026` and written in the browser's own way. */
export const DayInput = ({ value, ...others }: DayInputOptions) => (
  <span className="day-input" data-day={value === "" ? undefined : dayInWords(value)}>
    <input type="date" className="field-line field-day" value={value} {...others} />
  </span>
);
