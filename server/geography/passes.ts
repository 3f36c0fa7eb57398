/** A pass or high site that no settlement marks. */
export interface Pass {
  name: string;
  country: string;
  lat: number;
  lon: number;
  elevation_m: number;
}

/**
 * Well-known passes and high sites. Positions to about a kilometre and elevations as signposted:
 * written down from memory and looked over by hand, no published table read.
 */
export const PASSES: readonly Pass[] = [
  { name: "Stelvio Pass", country: "IT", lat: 46.5286, lon: 10.4533, elevation_m: 2757 },
  { name: "Col de l'Iseran", country: "FR", lat: 45.4172, lon: 7.0306, elevation_m: 2764 },
  { name: "Col du Galibier", country: "FR", lat: 45.0641, lon: 6.4078, elevation_m: 2642 },
  { name: "Furka Pass", country: "CH", lat: 46.5725, lon: 8.415, elevation_m: 2429 },
  { name: "Hochtor", country: "AT", lat: 47.082, lon: 12.8426, elevation_m: 2504 },
  { name: "Independence Pass", country: "US", lat: 39.1086, lon: -106.5636, elevation_m: 3687 },
  { name: "Loveland Pass", country: "US", lat: 39.6636, lon: -105.8794, elevation_m: 3655 },
  { name: "Tioga Pass", country: "US", lat: 37.9108, lon: -119.2583, elevation_m: 3031 },
  { name: "Abra La Raya", country: "PE", lat: -14.4833, lon: -70.9833, elevation_m: 4338 },
  {
    name: "Paso de los Libertadores",
    country: "AR",
    lat: -32.8236,
    lon: -70.0706,
    elevation_m: 3832,
  },
  { name: "Khardung La", country: "IN", lat: 34.278, lon: 77.604, elevation_m: 5359 },
];
