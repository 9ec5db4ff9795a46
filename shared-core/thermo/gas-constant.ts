/** Molar gas constant R [J/(mol K)], exact since 2019 (BIPM, SI brochure, 9th ed.). */
export const gasConstantJPerMolK = 8.314462618;
