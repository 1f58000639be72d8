/** One clear line, and an end, on a Node that is too old. */
export function refuseOldNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Cannot start: this is Node ${process.versions.node}, Canalog needs 20.19 or newer`);
  process.exit(3);
}
