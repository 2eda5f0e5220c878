/** @source CODATA 2018, exact since the redefinition of the SI in 2019 */
export const GAS_CONSTANT_J_PER_MOL_K = 8.314462618;
