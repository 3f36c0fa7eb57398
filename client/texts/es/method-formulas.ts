/** The method page's formulas, in Spanish. */
export const formulas: typeof import("../en/method-formulas.ts").formulas = {
  belief: {
    title: "Lo que se espera antes del primer ajuste",
    note: "Permite responder sin ningún ajuste y deja de pesar cuando llegan filas. El nivel a se espera según la práctica común, con un 30 % de margen.",
  },
  vote: {
    title: "Voto de una fila",
    note: "k participantes tienen su base en el mismo lugar y mes; n filas de un participante comparten su voto; v es la varianza propia de la fila. σ es la desviación típica del logaritmo de su densidad: sin temperatura, con altitud vaga. C es el CO final en ppm, cuando supera el usual.",
  },
  kinds: {
    title: "Clases de filas",
    note: "h es la probabilidad de que una fila sea honesta, y lo que cuenta. Las otras: altitud en pies dada como metros, que la mueve por la línea un δ conocido; llevada sin cambios desde el nivel del mar, nunca reajustada; cualquier otra cosa, repartida por igual. Las proporciones π se estiman junto con h. ω dice cuántas veces es tan frecuente confundir pies con metros en la franja de la fila como en todas, y se toma como la mitad a lo sumo: U son los votos allí, U_f los del lugar donde estarían los sitios verdaderos de tales filas.",
  },
  voice: {
    title: "Una franja de densidad es una voz",
    note: "V son los votos honestos de una franja de 0,05 de ancho en x, e su residuo medio, τ la dispersión propia de las franjas en torno a la línea. Por llena que esté, una franja no vale más de 1/τ², y menos cuando queda apartada: ψ es la función bicuadrada, nula donde e pasa de cuatro de sus desviaciones típicas.",
  },
  step: {
    title: "Pasos dentro de un participante",
    note: "Entre dos filas de un participante se anula lo que el calefactor tiene de propio. La raíz es la desviación típica de ese ruido: cuánto se dispersan los ajustes de un calefactor y cuánto difieren las pendientes propias de los calefactores.",
  },
  dispute: {
    title: "Cuando las filas contradicen a los pasos",
    note: "I es lo que filas y pasos saben cada uno de la pendiente. Más allá de z² = 2 cede la voz de las filas sobre la pendiente, y si ocurre tras la primera ronda, se busca de nuevo el nivel a lo largo de su pendiente, entre los votos cercanos a la densidad en que ajusta la mayoría.",
  },
  covariance: {
    title: "Covarianza de la línea",
    note: "M dice cómo se dispersaría la puntuación si cada voto fuera un calefactor aparte, G cómo se dispersa entre F partes de los participantes, P es la información de lo esperado. B dice cómo cambia la puntuación con la línea cuando los pesos cambian con ella; g es la puntuación de una parte, corregida por su palanca (CR2).",
  },
  flattening: {
    title: "La pendiente que los errores de densidad han aplanado",
    note: "Toda densidad es algo errónea y ninguna lo dice: eso aplana la línea en f. W es el peso de las filas y el doble del de los pasos, I lo que se sabe de la pendiente, e su error estándar. En cuanto f se nota junto a e, se devuelve, en torno al centro de las filas; el resto es duda.",
  },
  bias: {
    title: "Duda más allá de la dispersión",
    note: "u es la proporción de votos que no son honestos, x_m el centro de las filas, Σ(x) la varianza de la línea en x. Con L² se hace la banda media.",
  },
  scatter: {
    title: "Dispersión entre calefactores",
    note: "s, su crecimiento γ al alejarse de x = 0 y los grados de libertad ν de las colas se promedian sobre su distribución a posteriori en una rejilla; d grados de libertad dicen cuán bien se conoce s. N son los votos: pocos no pueden mostrar el crecimiento.",
  },
  mean: {
    title: "Banda media",
    note: "σ es aquí la duda sobre el aire por el que se pregunta, con los grados de libertad de Satterthwaite para la suma.",
  },
  newHeater: {
    title: "Banda de un calefactor más",
    note: "La duda de la línea y la dispersión juntas.",
  },
  aside: {
    title: "Una fila se aparta",
    note: "Si la dispersión es la que dice el ajuste estadístico, eso es una fila honesta de cada 200.",
  },
};
