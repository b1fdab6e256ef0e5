package org.nestyear.core.release;

/**
 * What one release gives in one member.
 *
 * @param daughters surviving daughters
 * @param bloomDays female flight days inside the target bloom
 * @param settled females that settle
 * @param tunnelsWanted tunnels that would be begun if there were enough
 * @param capped whether tunnels ran out
 */
record Score(double daughters, double bloomDays, double settled, double tunnelsWanted, boolean capped) {}
