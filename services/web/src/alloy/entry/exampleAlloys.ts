/** Alloys to look at for a start; all of them are in the table of published alloys, so that there is something to see. */
export const exampleAlloys = ['CoCrFeMnNi', 'AlCoCrFeNi', 'AlCoCrCuFeNi', 'NbMoTaW', 'HfNbTaTiZr'];
