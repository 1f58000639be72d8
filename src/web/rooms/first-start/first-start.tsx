import type { Settings } from "../../../record/settings.ts";

/** Not written yet. */
export const FirstStart = ({ settings }: { readonly settings: Settings }) => <main>{settings.who}</main>;
