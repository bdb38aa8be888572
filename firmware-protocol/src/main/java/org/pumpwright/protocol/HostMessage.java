package org.pumpwright.protocol;

/** A message from the host to the board. Thread-safe. */
public sealed interface HostMessage extends Message
        permits Hello,
                Arm,
                Drive,
                Stream,
                KeepAlive,
                MakeSafe,
                ReadLimits,
                Tighten,
                EventsFrom,
                SelfTest,
                BlobRead,
                BlobWrite,
                BlobCommit,
                Windows,
                Dither {}
