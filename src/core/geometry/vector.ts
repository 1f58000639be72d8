/** A place or a direction in space as three plain numbers; their unit is the caller's, usually mm. */
export interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The vector of three numbers. */
export const vector = (x: number, y: number, z = 0): Vector => ({ x, y, z });

/** a + t b. */
export const plus = (a: Vector, b: Vector, t = 1): Vector => ({ x: a.x + t * b.x, y: a.y + t * b.y, z: a.z + t * b.z });

/** a - b. */
export const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });

/** s a + t b. */
export const mix = (s: number, a: Vector, t: number, b: Vector): Vector => ({
  x: s * a.x + t * b.x,
  y: s * a.y + t * b.y,
  z: s * a.z + t * b.z,
});

/** The scalar product. */
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;

/** The vector product, right-handed. */
export const cross = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

/** The length of a vector. */
export const norm = (a: Vector): number => Math.hypot(a.x, a.y, a.z);

/** The distance of two places. */
export const distance = (a: Vector, b: Vector): number => norm(minus(a, b));

/** The vector of length 1 in the same direction; a vector of length 0 has none and comes back as it is. */
export const unit = (a: Vector): Vector => {
  const length = norm(a);
  return length === 0 ? a : { x: a.x / length, y: a.y / length, z: a.z / length };
};

/** The angle between two directions in radians, 0 to pi; exact near 0 and near pi too. */
export const angleBetween = (a: Vector, b: Vector): number => Math.atan2(norm(cross(a, b)), dot(a, b));
