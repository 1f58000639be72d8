import { homedir } from "node:os";
import { join, resolve } from "node:path";

/** What of the surroundings decides where the record lies; a test gives its own. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly userHome: string;
}

/**
 * The folder in which the record lies: CANALOG_HOME where it is set, else the person's data folder as the system names it
 * (XDG_DATA_HOME or ~/.local/share/canalog; Application Support on macOS; LOCALAPPDATA on Windows). Takes the environment.
 */
export function homeFolder(
  env: Readonly<Record<string, string | undefined>>,
  { platform, userHome }: Surroundings = { platform: process.platform, userHome: homedir() },
): string {
  const named = env.CANALOG_HOME?.trim();
  if (named !== undefined && named !== "") return resolve(named);
  if (platform === "win32") return join(env.LOCALAPPDATA || join(userHome, "AppData", "Local"), "Canalog");
  if (platform === "darwin") return join(userHome, "Library", "Application Support", "Canalog");
  // The specification of the base directories ignores a path that is not absolute.
  const data = env.XDG_DATA_HOME?.startsWith("/") ? env.XDG_DATA_HOME : join(userHome, ".local", "share");
  return join(data, "canalog");
}
