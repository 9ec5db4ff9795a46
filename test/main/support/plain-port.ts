/** A port of which the system tells nothing but its path. */
export const plainPort = {
  path: '/dev/ttyACM0',
  manufacturer: null,
  vendorId: null,
  productId: null,
  serialNumber: null,
  likelyProbe: false,
};
