import { homeFolder } from "../store/home.ts";

/** `canalog where`: the data folder, on one line. */
export function whereCommand(): void {
  console.log(homeFolder(process.env));
}
