package org.pumpwright.benchmarks.regrade;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;

/** The most heap that was in use, garbage included. Thread-safe. */
final class HeapPeak {
    private final List<MemoryPoolMXBean> pools;

    private HeapPeak(List<MemoryPoolMXBean> pools) {
        this.pools = pools;
    }

    /** Begins to watch. */
    static HeapPeak begin() {
        List<MemoryPoolMXBean> heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
        heap.forEach(MemoryPoolMXBean::resetPeakUsage);
        return new HeapPeak(heap);
    }

    /** At most this much since. */
    double bytes() {
        return pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    }
}
