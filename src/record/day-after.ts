const msPerDay = 86_400_000;

/** The day so many days after another, as `2026-11-24`; days below 0 count back. */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(day) + days * msPerDay).toISOString().slice(0, 10);
