/** Fitting the open data again in the browser, in Spanish. */
export const again: typeof import("../en/again.ts").again = {
  title: "Repetir el cálculo aquí",
  intro:
    "No hace falta creer las cifras publicadas: este navegador puede descargar todos los ajustes aceptados y hacer el cálculo él mismo, con el mismo método. Cada cifra debe salir igual hasta el último dígito.",
  button: "Repetir el cálculo aquí",
  working: "Cargando los ajustes …",
  fitting: (done: number, of: number) => `Calculando tamaños y potencias: ${done} de ${of} hechos.`,
  same: (version: string, rows: string, groups: number) =>
    `Igual hasta el último dígito: cada cifra ${groups === 1 ? "del único tamaño y potencia" : `de los ${groups} tamaños y potencias`} del cálculo ${version}, repetida aquí con ${rows} filas.`,
  differs: (version: string, differing: number, of: number) =>
    `No es igual: en ${differing} de ${of} tamaños y potencias alguna cifra difiere del cálculo ${version}.`,
  moving: (version: string) =>
    `Desde el cálculo ${version} han llegado o se han retirado ajustes, y el siguiente aún no se ha publicado. Suele tardar un momento; si una alarma lo retiene, hasta una semana.`,
  otherCode: (version: string) =>
    `El cálculo ${version} se hizo con otros parámetros que los de esta página. Vuelve a cargarla e inténtalo de nuevo.`,
  nothing: "Aún no hay ajustes aceptados, así que no hay nada que calcular.",
  unreachable: "No se puede conectar con el atlas. Inténtalo de nuevo cuando tengas conexión.",
  failed: (status: number) =>
    `El atlas no dio sus datos (respuesta ${status}). Inténtalo de nuevo dentro de un rato.`,
  broken: "Lo que llegó no se puede leer: quizá se cortó por el camino. Inténtalo de nuevo.",
  retry: "Intentar de nuevo",
  tableLabel: "Tabla: cifras hechas aquí junto a las publicadas",
  group: "Tamaño y potencia",
  columns: { intercept: "Ordenada", slope: "Pendiente", spread: "Dispersión" },
  others: "Todas las demás",
  agrees: "igual",
  published: (figure: string) => `publicado ${figure}`,
  differ: "difieren",
  none: "ninguna",
};
