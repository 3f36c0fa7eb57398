/** International foot, 1959. */
export const FOOT_m = 0.3048;

/** 25.4 mm × 13,595.1 kg/m³ × 9.80665 m/s². */
export const INCH_OF_MERCURY_hPa = 33.86388640341;

export const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
