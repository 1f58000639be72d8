/** The day that lies a number of days after another. Takes `2024-02-20` and whole days, negative for before. */
export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + Math.round(days) * 86_400_000).toISOString().slice(0, 10);
}

/** The same, moved on to Monday where it would be a weekend. */
export function workdayAfter(day: string, days: number): string {
  const found = dayAfter(day, days);
  const weekday = new Date(`${found}T00:00:00Z`).getUTCDay();
  return weekday === 0 ? dayAfter(found, 1) : weekday === 6 ? dayAfter(found, 2) : found;
}
