/**
 * The quantile of the chi-square distribution that a standard normal deviate z marks (z = -1.645 marks 5 %).
 * Takes the degrees of freedom (1 and more) and z. Exact to about 1 % above 5 degrees of freedom and to about 10 % of
 * the scale at 1 to 2; never below a small positive number.
 * @source E. B. Wilson, M. M. Hilferty, "The distribution of chi-square", Proc Natl Acad Sci USA 1931;17:684-688 (memory)
 */
export function chiSquareQuantile(degreesOfFreedom: number, z: number): number {
  const part = 2 / (9 * degreesOfFreedom);
  const root = 1 - part + z * Math.sqrt(part);
  return degreesOfFreedom * Math.max(root, 0.15) ** 3;
}
