/** Which tube shift would settle what is open. */
export function GuideSection() {
  return null;
}
