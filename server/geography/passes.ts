/** A pass, high site or missing town that the place data do not have. */
export interface Pass {
  name: string;
  /** Other names people look for. */
  names?: readonly string[];
  /** ISO 3166-1 code. */
  country: string;
  /** Code of its state, in the United States. */
  state?: string;
  lat: number;
  lon: number;
  elevation_m: number;
  /** Inhabitants, for a town; none for a pass. */
  people?: number;
  /** Where position and elevation are from. */
  source: string;
}

/** Elevation as signposted or published, position to about a kilometre; looked over by hand against the grid. */
const MEMORY = "from memory";

/** Elevation within 10 m of a published list's; the tests name the list of each. */
const LISTS = "published lists of passes; position from memory";

/** Elevation as a public encyclopaedia's article gives it. */
const ENCYCLOPAEDIA = "public encyclopaedia; position from memory";

type Row = readonly [
  name: string,
  names: string,
  countryAndState: string,
  lat: number,
  lon: number,
  elevation_m: number,
  source: string,
];

const ROWS: readonly Row[] = [
  ["Stelvio Pass", "Passo dello Stelvio,Stilfser Joch", "IT", 46.5286, 10.4533, 2757, LISTS],
  ["Gavia Pass", "Passo di Gavia", "IT", 46.3436, 10.4878, 2621, MEMORY],
  ["Timmelsjoch", "Passo del Rombo", "AT", 46.905, 11.097, 2474, LISTS],
  ["Hochtor", "Grossglockner Road", "AT", 47.082, 12.8426, 2504, LISTS],
  ["Col de l'Iseran", "Iseran", "FR", 45.4172, 7.0306, 2764, LISTS],
  ["Col de la Bonette", "Bonette", "FR", 44.3269, 6.8069, 2715, LISTS],
  ["Col du Galibier", "Galibier", "FR", 45.0641, 6.4078, 2642, LISTS],
  ["Col du Tourmalet", "Tourmalet", "FR", 42.9083, 0.145, 2115, MEMORY],
  ["Pic du Midi Observatory", "Pic du Midi de Bigorre", "FR", 42.9364, 0.1425, 2877, MEMORY],
  ["Furka Pass", "Furkapass", "CH", 46.5725, 8.415, 2429, LISTS],
  ["Grimsel Pass", "Grimselpass", "CH", 46.5614, 8.3378, 2164, LISTS],
  ["Susten Pass", "Sustenpass", "CH", 46.73, 8.4472, 2224, LISTS],
  ["Nufenen Pass", "Nufenenpass,Passo della Novena", "CH", 46.4772, 8.3878, 2478, LISTS],
  ["Gotthard Pass", "Passo del San Gottardo", "CH", 46.5592, 8.5614, 2106, LISTS],
  ["Great St Bernard Pass", "Grand Saint Bernard", "CH", 45.8689, 7.1706, 2469, LISTS],
  ["Teide Observatory", "Izaña", "ES", 28.3009, -16.5119, 2390, MEMORY],
  ["Roque de los Muchachos", "", "ES", 28.7606, -17.8817, 2396, MEMORY],
  ["Tizi n'Tichka", "", "MA", 31.286, -7.381, 2260, MEMORY],
  ["Sani Pass", "Sani Top", "LS", -29.5847, 29.2897, 2876, MEMORY],
  ["Sutherland Observatory", "", "ZA", -32.3783, 20.8117, 1798, MEMORY],
  ["Independence Pass", "", "US.CO", 39.1086, -106.5636, 3687, LISTS],
  ["Cottonwood Pass", "", "US.CO", 38.8278, -106.4094, 3696, LISTS],
  ["Loveland Pass", "", "US.CO", 39.6636, -105.8794, 3655, LISTS],
  ["Hoosier Pass", "", "US.CO", 39.3617, -106.0625, 3518, LISTS],
  ["Monarch Pass", "", "US.CO", 38.4967, -106.3256, 3448, LISTS],
  ["Wolf Creek Pass", "", "US.CO", 37.4828, -106.8019, 3309, LISTS],
  ["Beartooth Pass", "", "US.WY", 44.9689, -109.4711, 3337, MEMORY],
  ["Tioga Pass", "", "US.CA", 37.9108, -119.2583, 3031, LISTS],
  ["Donner Pass", "", "US.CA", 39.316, -120.326, 2151, LISTS],
  ["Mauna Kea", "Maunakea", "US.HI", 19.8207, -155.4681, 4207, MEMORY],
  ["Ticlio", "Anticona", "PE", -11.5964, -76.1914, 4818, MEMORY],
  ["Abra La Raya", "", "PE", -14.4833, -70.9833, 4338, MEMORY],
  ["Chacaltaya", "", "BO", -16.3533, -68.1314, 5240, MEMORY],
  ["Uspallata Pass", "Cristo Redentor,Paso Bermejo", "AR", -32.825, -70.0706, 3832, LISTS],
  ["Chajnantor Plateau", "Llano de Chajnantor", "CL", -23.0236, -67.7544, 5058, MEMORY],
  ["Cerro Paranal", "Paranal", "CL", -24.6272, -70.4042, 2635, MEMORY],
  ["La Silla", "", "CL", -29.2567, -70.73, 2400, MEMORY],
  ["Khardung La", "Khardong La", "IN", 34.278, 77.604, 5359, LISTS],
  ["Tanglang La", "Taglang La", "IN", 33.508, 77.771, 5328, LISTS],
  ["Rohtang Pass", "Rohtang La", "IN", 32.3716, 77.2466, 3978, LISTS],
  ["Zoji La", "Zojila", "IN", 34.279, 75.472, 3528, LISTS],
  ["Nathu La", "", "IN", 27.3867, 88.8306, 4310, LISTS],
  ["Khunjerab Pass", "", "PK", 36.85, 75.4278, 4693, MEMORY],
  ["Thorong La", "Thorung La", "NP", 28.7939, 83.9381, 5416, ENCYCLOPAEDIA],
  ["Wuling", "Hehuanshan,武嶺", "TW", 24.137, 121.276, 3275, MEMORY],
  ["Siding Spring", "", "AU", -31.2733, 149.0617, 1165, MEMORY],
  ["Mount John", "", "NZ", -43.9867, 170.465, 1029, MEMORY],
];

/** A city of a million that the place data leave out; inhabitants of the 2012 census. */
const EL_ALTO: Pass = {
  name: "El Alto",
  country: "BO",
  lat: -16.505,
  lon: -68.163,
  elevation_m: 4150,
  people: 848_000,
  source: MEMORY,
};

/** Well-known passes and high sites, and a town the data miss. */
export const PASSES: readonly Pass[] = [
  ...ROWS.map(([name, names, countryAndState, lat, lon, elevation_m, source]) => ({
    name,
    names: names.split(",").filter(Boolean),
    country: countryAndState.slice(0, 2),
    state: countryAndState.slice(3),
    lat,
    lon,
    elevation_m,
    source,
  })),
  EL_ALTO,
];
