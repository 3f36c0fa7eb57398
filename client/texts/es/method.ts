import type { FIT_SETTINGS } from "../../../model/fit/settings.ts";
import { formulas } from "./method-formulas.ts";

/** The method page, in Spanish. */
export const m: typeof import("../en/method.ts").m = (S: typeof FIT_SETTINGS) => ({
  title: "Método",
  screen: "El modelo en una pantalla de matemáticas",
  formula: {
    pump: "frecuencia de la bomba",
    fan: "velocidad del ventilador",
    heater: "calefactor",
    noise: "ruido",
    letters: [
      ["a", "nivel: el ajuste medio en aire de 1,225 kg/m³"],
      ["b", "cómo sigue el ajuste al aire; un reajuste perfecto da 1"],
      ["ρ", "densidad del aire en la toma, kg/m³"],
      ["calefactor", "lo que distingue a un calefactor de la media"],
      ["ruido", "lo que distingue un ajuste de otro del mismo calefactor"],
    ],
    where:
      "Frecuencia de la bomba en Hz, velocidad del ventilador en 1000 rpm; una fórmula por clase de potencia y extremo.",
  },
  short:
    "Abajo, y es el lado izquierdo, x = ln(ρ/1,225), y r = y − a − b·x es lo lejos que está una fila de la línea. φ es la densidad normal con desviación típica s; t es la t de Student.",
  formulas,
  sections: {
    air: {
      title: "El aire",
      text: [
        "La presión del lugar sale de la altitud por ISO 2533; la densidad del aire húmedo, por CIPM-2007. Una presión al nivel del mar (QNH) solo se acepta con su propio nombre, y se reduce con la altitud.",
        "Lo que no se da se supone, y la duda se lleva como σ: 10 K para la temperatura, 0,8 % para la presión del tiempo y 0,5 % más por km, 25 puntos de humedad, y la de la altitud. Una fila con duda cuenta menos; una pregunta con duda recibe bandas más anchas.",
      ],
    },
    model: {
      title: "Por qué esta línea",
      text: [
        "El ventilador mueve volumen, así que la masa de aire va con su velocidad por la densidad; la bomba mueve volumen por pulso. Con igual combustión, la frecuencia de la bomba por velocidad del ventilador sigue a la densidad del aire: b = 1. Una multitud muestra algo menos. Logaritmos, porque los calefactores difieren por factores.",
      ],
    },
    fit: {
      title: "Para qué está cada parte",
      text: [
        "Una voz por participante, o una clave que inunda sería la multitud. √k en un lugar y un momento: un encuentro, o una multitud inventada, no son k testigos independientes.",
        "Confianza según la varianza propia: una fila sin temperatura no es falsa, solo sabe menos. Un error de densidad mueve una fila por la línea, así que cuenta multiplicado por la pendiente. Alrededor de su mínimo, el CO sube con el cuadrado de la distancia; por eso un CO final superior al usual dice cuánto puede desviarse el ajuste.",
        "Una mezcla, no un corte: un desliz con mecanismo se reconoce por dónde coloca la fila, y lo que queda entre clases cuenta según su probabilidad, de modo que ninguna fila salta de clase cuando llega otra.",
        "Franjas de densidad como voces: los lugares altos tienen pocas filas y mucha palanca, y un lugar abarrotado no debe comprar la pendiente.",
        "Pasos: la única comparación en que los calefactores no difieren. Donde las filas los contradicen, cede la voz de las filas sobre la pendiente, se mantiene su voz sobre el nivel, se añade duda y salta una alarma.",
        `Un comienzo por consenso: se busca una línea en la que coincidan los más votos, sobre una rejilla de pendientes y niveles, con una dispersión que se toma por conocida (${100 * (S.start_spread ?? Number.NaN)} %), para que una multitud apretada no gane nada por serlo. Desde ahí se renuevan por turnos clases, proporciones, dispersiones y línea hasta que la línea se detiene.`,
        "Puesta en común: cada clase y extremo se ajusta primero por separado; después, las pendientes de otras clases, y los niveles y dispersiones de otras clases en el mismo extremo, pasan a formar parte de lo que espera, con las diferencias entre clases que se hayan visto. Una clase cuyas filas contradicen a las otras se deja a sí misma.",
      ],
    },
    bands: {
      title: "Por qué estas bandas",
      text: [
        "Las filas de un participante van juntas, así que la covarianza se toma por partes de los participantes; sin su corrección para muestras pequeñas es demasiado estrecha para una multitud pequeña. Unas pocas partes no pueden decir cómo se dispersan: junto a la suya cuenta la covarianza del propio modelo.",
        "Una covarianza habla de dispersión. Lo que unas filas falsas no descubiertas hacen a la línea no es dispersión: para eso está la duda que se añade.",
        "La dispersión se promedia sobre lo que las filas dejan posible: su tamaño, su crecimiento al alejarse de x = 0, porque los calefactores tienen pendientes propias, y sus colas, porque algunos dueños son descuidados.",
        "Cada versión publica la cobertura prometida frente a la observada: cada parte de los participantes juzgada por la línea de los demás.",
      ],
    },
    aside: {
      title: "Filas apartadas",
      text: [
        "Apartar no interviene en cómo se hace la línea. Sale solo de la fila y del ajuste estadístico publicado, con una frase que da las cifras; cuando ajustes posteriores mueven la línea o ensanchan la dispersión, la fila vuelve por sí sola.",
      ],
    },
    door: {
      title: "Qué se comprueba a la entrada",
      text: [
        "Límites que pone la física y deslices con nombre: altitud en pies, °F como °C, pulsos por minuto como Hz, una coma, extremos cambiados, velocidad del ventilador doblada, a la mitad, en decenas o centenas, dosis en mL, una presión al nivel del mar como presión del lugar. Un desliz se nombra cuando la fila se vuelve verosímil al deshacerlo. Más vale un desliz no visto que una fila buena retenida: lo que pasa queda para el ajuste estadístico.",
      ],
    },
    alarms: {
      title: "Alarmas",
      text: [
        "Quien cuida el atlas recibe aviso cuando una versión nueva hace lo que las multitudes honestas rara vez hacen: el ajuste medio se movió desde la versión anterior; muchos participantes coincidieron en un lugar y un mes; las filas contradicen a los pasos dentro de los participantes; una segunda multitud junto a la línea explicaría mucho mejor las filas. Las multitudes honestas simuladas cruzan cada umbral menos de una vez en cien ajustes estadísticos.",
      ],
    },
    limits: {
      title: "Lo que no puede saber",
      text: [
        "Una mentira más numerosa que la verdad allí donde se cuenta. Participantes con dos ajustes cada uno, uno verdadero junto al mar y otro falso en lo alto, pueden ser más que los honestos allí, y sus propios pasos concuerdan con sus filas. Calefactores con menos pendiente enviarían lo mismo, así que ningún estimador que solo vea estas filas puede distinguirlos. La línea los sigue, la banda media no acierta, y lo que protege a quien lee son las alarmas y quien cuida el atlas.",
        "Los mentirosos con filas sueltas, repartidos por lugares, no tienen pasos de su parte: la pendiente aguanta, el nivel cede cerca de un uno por ciento, la banda se ensancha en consecuencia y salta una alarma.",
        "Las altitudes en pies que ningún lugar contradice mueven filas por la línea, donde parecen casi honestas: se pierde exactitud en lo alto, y solo a veces salta una alarma.",
        "Los deslices que cambian el aire y no el ajuste, °F tomados por °C o una presión al nivel del mar por la del lugar, dejan un sesgo que la banda media no cubre. Una clase distinta de todas las demás se inclina hacia lo esperado hasta que bastantes de sus participantes hayan estado arriba. Con colas muy pesadas, la banda de un calefactor más cumple algo menos de lo que dice. Quienes paran pronto y no declaran su CO parecen calefactores distintos.",
        "Nada en el modelo se curva; más allá de las densidades vistas extrapola, y lo dice. La banda de un calefactor más es para uno como los de quienes participan. Los términos de sesgo y los umbrales se fijaron con multitudes inventadas por nosotros: las que engañen de otro modo pueden ser peores.",
      ],
    },
    again: {
      title: "Repetirlo",
      text: [
        `El estado del ajuste estadístico es una rejilla fija de sumas ponderadas, para cada una de ${S.folds} partes. Cada término se redondea a 2⁻³², de modo que las sumas son exactas: las filas se pueden contar y descontar en cualquier orden, y las mismas filas dan los mismos bits. Un ajuste nuevo cambia las sumas de su participante, y las de sus vecinos cuando cambia su voto; la rejilla no crece con las filas.`,
        "Cualquiera puede rehacer las cifras publicadas desde el CSV con npm run fit, y el estudio de las bandas con npm run study; el mismo código, tamaño y semilla dan las mismas cifras. En el código, docs/method.md tiene la misma materia en inglés con todos los números elegidos.",
      ],
    },
    references: {
      title: "Referencias",
      text: [
        "Beaton y Tukey 1974 (bicuadrada). Bell y McCaffrey 2002 (CR2). Cameron y Miller 2015 (inferencia agrupada). Dempster, Laird y Rubin 1977 (esperanza-maximización). Gelman y Hill 2007 (puesta en común parcial). Holland y Welsch 1977 (reponderación). Huber 1964. Mallows 1975 (pesos por posición). Rousseeuw y Leroy 1987 (ruptura y palanca). Satterthwaite 1946 (grados de libertad). Theil 1950, Sen 1968. Varadhan y Roland 2008 (extrapolación cuadrática).",
        "ISO 2533:1975. CIPM-2007: Picard, Davis, Gläser y Fujii 2008.",
      ],
    },
  },
  figures: {
    title: "Cifras",
    intro:
      "Se simularon multitudes cuya verdad se conoce. Error del ajuste medio a 0 / 1500 / 3000 / 4500 m, cuadrático medio en %, por estimador; después, cuántas veces cumplieron las bandas de Hypsotune, de cada 100, a 0 / 4500 m. La bicuadrada por votos reúne los remedios robustos habituales: un voto por participante, un comienzo por consenso, la bicuadrada de Tukey con una expectativa sobre la pendiente y un corte.",
    scenario: "Escenario",
    bands: { new_heater: "Un calefactor más", mean: "Media" },
    band: (band: string, pct: string) => `${band} ${pct} %`,
    none: "–",
    table: "Tabla: errores y coberturas por escenario",
    calibration: {
      intro:
        "Cuántas veces cumplieron las bandas, de cada 100, en el peor y en el mejor de cinco aires (0 m a −20 °C; 0, 1500, 3000, 4500 m): multitudes honestas de tantos contribuyentes, la verdad de cada simulación sacada de lo que se supone de antemano.",
      contributors: "Contribuyentes",
      table: "Tabla: cobertura de las bandas por número de contribuyentes",
    },
  },
});
