import type { Figure, ReasonWords } from "../en/reasons.ts";

/** What the atlas says of a tune, in Spanish. */
export const reasonWords: ReasonWords = {
  quantities: { pump_Hz: "frecuencia de la bomba", fan_rpm: "velocidad del ventilador" },
  reasons: {
    temperature_in_fahrenheit: (_, meant) =>
      `En °C es más calor que en cualquier sitio donde se ajusta; en °F es normal. ¿Querías decir ${meant}?`,
    temperature_out_of_range: () =>
      "Esta temperatura no se da en ningún sitio donde se ajusta. Revisa la cifra y su unidad.",
    dose_in_mL: (_, meant) =>
      `Con tan poco combustible por pulso no funciona ningún calefactor; en mL es normal. ¿Querías decir ${meant}?`,
    dose_decimal_slip: (_, meant) =>
      `Un pulso no puede dar tanto; con la coma en otro sitio es normal. ¿Querías decir ${meant}?`,
    dose_out_of_range: () =>
      "Un pulso no puede dar tanto o tan poco combustible. Revísalo o déjalo vacío.",
    tuned_in_the_future: () => "Ese mes aún no ha llegado. Revisa el mes del ajuste.",
    elevation_in_feet: (_, meant) => `Parece una altitud en pies. ¿Querías decir ${meant}?`,
    elevation_metres_as_feet: (_, meant) =>
      `Esta altitud parece convertida desde pies una vez de más. ¿Querías decir ${meant}?`,
    elevation_out_of_range: () => "A esta altitud no acampa nadie. Revisa la cifra y su unidad.",
    elevation_against_place: () =>
      "El suelo en este lugar está a otra altitud. Revisa la altitud y el lugar.",
    pressure_against_elevation: () =>
      "Esta presión del lugar no casa con esta altitud. Revisa ambas.",
    qnh_as_station_pressure: (_, meant) =>
      `Es una presión al nivel del mar (QNH). ¿Querías decir ${meant} en el lugar? Si no, indícala como QNH.`,
    pump_decimal_slip: (figure, meant) =>
      `${figure}: diez veces más o menos de lo habitual, como con la coma mal puesta. ¿Querías decir ${meant}?`,
    pump_pulses_per_minute: (figure, meant) =>
      `${figure}: parecen pulsos por minuto, no por segundo. ¿Querías decir ${meant}?`,
    fan_rpm_doubled: (figure, meant) =>
      `${figure}: parece el doble, como al contar mal los imanes. ¿Querías decir ${meant}?`,
    fan_rpm_halved: (figure, meant) =>
      `${figure}: parece la mitad, como al contar mal los imanes. ¿Querías decir ${meant}?`,
    fan_rpm_in_tens: (figure, meant) => `${figure}: parecen decenas. ¿Querías decir ${meant}?`,
    fan_rpm_in_hundreds: (figure, meant) => `${figure}: parecen centenas. ¿Querías decir ${meant}?`,
    ends_swapped: (figure, meant) =>
      `${figure}: es de la otra potencia; las dos parecen cambiadas. ¿Querías decir ${meant}?`,
    ends_out_of_order: (figure) => `${figure}: debe ser menor que a potencia máxima. Revisa ambas.`,
    fan_speed_out_of_range: (figure) => `${figure}: muy lejos de lo habitual. Revísala.`,
    mixture_out_of_range: (figure) =>
      `${figure}: tan rica o tan pobre, la mezcla no prende en este aire. Revisa la bomba y el ventilador a esta potencia.`,
    held_by_steward: () =>
      "Quien cuida el atlas retiene este ajuste. Tu corrección se guarda y cuenta en cuanto se acepte.",
    undone_by_steward: () => "Se deshizo una decisión de quien cuida el atlas.",
    steward_can_be_right: () =>
      "Quien cuida el atlas ha mirado los valores: pueden estar bien tal como están.",
    steward_own_tunes_agree: () =>
      "Es poco común, pero otros ajustes del mismo propietario concuerdan.",
    steward_place_explains: () => "Es poco común, pero el lugar y el tiempo lo explican.",
    steward_asks_to_check: () => "Comprueba los valores; después corrige el ajuste o retíralo.",
    steward_waits_for_more: () => "Retenido hasta que lleguen más ajustes de este tipo.",
    steward_many_alike_held: () =>
      "Uno de muchos iguales que llegaron juntos: retenido hasta saber de dónde vienen.",
    steward_mistyped: () =>
      "Los valores están mal escritos y no se puede saber qué se quería decir.",
    steward_not_measured: () => "Esto no parece medido en un calefactor.",
    steward_shared_twice: () => "El mismo ajuste se compartió más de una vez.",
    steward_many_alike: () => "Uno de muchos iguales que llegaron juntos con claves nuevas.",
  },
  compared: (end, size, way) =>
    size === "0"
      ? `${end}: justo lo que se espera con esta densidad del aire.`
      : `${end}: un ${size} % más ${way === "rich" ? "rica" : "pobre"} de lo que se espera con esta densidad del aire.`,
};

/** Why a tune does not count, in Spanish. */
export const asideWords: Record<string, (figure: Figure) => string> = {
  far_richer: (figure) =>
    `Mucho más rico que otros ${figure("others")} ajustes comparables: un ${figure("off_pct")} % por encima de la media en este aire (${figure("pump_Hz_per_krpm")} frente a ${figure("average_Hz_per_krpm")} Hz por 1000 rpm).`,
  far_leaner: (figure) =>
    `Mucho más pobre que otros ${figure("others")} ajustes comparables: un ${figure("off_pct")} % por debajo de la media en este aire (${figure("pump_Hz_per_krpm")} frente a ${figure("average_Hz_per_krpm")} Hz por 1000 rpm).`,
  held_at_the_door: () =>
    "Retenido a la entrada: parece mal tecleado. Solo quien lo compartió sabe el motivo.",
};
