const msPerDay = 86_400_000;
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A day as it is read: `12 Mar 2026`. */
export function dayInWords(day: string): string {
  const [year = "", month = "", date = ""] = day.split("-");
  return `${Number(date)} ${months[Number(month) - 1] ?? month} ${year}`;
}

/** Whole days from one day to another; negative when the second comes first. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / msPerDay);

/** The day in this place now, as the record writes days. */
export function today(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** How far away a day is: `today`, `in 41 days`, `3 days ago`, `in 7 months`. */
export function distanceInWords(from: string, to: string): string {
  const days = daysBetween(from, to);
  if (days === 0) return "today";
  const span = spanInWords(Math.abs(days));
  return days > 0 ? `in ${span}` : `${span} ago`;
}

/** A number of days in the unit that a person would say. */
export function spanInWords(days: number): string {
  if (days < 61) return days === 1 ? "1 day" : `${days} days`;
  if (days < 730) return `${Math.round(days / 30.44)} months`;
  return `${Math.round((days / 365.25) * 2) / 2} years`.replace(".5", "½");
}

/** The time of day of a moment: `14:02`. */
export function timeInWords(moment: Date): string {
  return `${String(moment.getHours()).padStart(2, "0")}:${String(moment.getMinutes()).padStart(2, "0")}`;
}

/** A moment of the record in this place's time: `12 Mar 2026, 14:02`. */
export function momentInWords(moment: string): string {
  const at = new Date(moment);
  return `${dayInWords(today(at))}, ${timeInWords(at)}`;
}
