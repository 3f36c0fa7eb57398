/** A place the society observes from. */
export interface Site {
  name: string;
  lat: number;
  lon: number;
  elevation_m: number;
}

/** Real towns near dark skies, position and elevation as GeoNames has them, to about a kilometre and 10 m. */
export const SITES: readonly Site[] = [
  { name: "Swakopmund", lat: -22.678, lon: 14.527, elevation_m: 10 },
  { name: "Husum", lat: 54.477, lon: 9.051, elevation_m: 10 },
  { name: "Tofino", lat: 49.153, lon: -125.907, elevation_m: 20 },
  { name: "Reims", lat: 49.265, lon: 4.029, elevation_m: 90 },
  { name: "Coonabarabran", lat: -31.273, lon: 149.278, elevation_m: 510 },
  { name: "Lake Tekapo", lat: -44.004, lon: 170.477, elevation_m: 720 },
  { name: "Sutherland", lat: -32.392, lon: 20.663, elevation_m: 1460 },
  { name: "Flagstaff", lat: 35.198, lon: -111.651, elevation_m: 2110 },
  { name: "Leadville", lat: 39.251, lon: -106.293, elevation_m: 3100 },
  { name: "La Quiaca", lat: -22.102, lon: -65.593, elevation_m: 3440 },
  { name: "Puno", lat: -15.842, lon: -70.02, elevation_m: 3830 },
  { name: "Putre", lat: -18.196, lon: -69.559, elevation_m: 3500 },
  { name: "Cerro de Pasco", lat: -10.667, lon: -76.257, elevation_m: 4340 },
  { name: "El Alto", lat: -16.505, lon: -68.163, elevation_m: 4150 },
];
