/** The molar gas constant, J/(mol K); exact since 2019. @source CODATA 2018, NIST SP 961 */
export const GAS_CONSTANT_J_PER_MOL_K = 8.314462618;
