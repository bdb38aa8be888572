package org.pumpwright.protocol;

/** A message from the board to the host. Thread-safe. */
public sealed interface BoardMessage extends Message
        permits Identity,
                Acknowledge,
                Refuse,
                Sample,
                Event,
                Limits,
                SelfTestResult,
                BlobData,
                ShortSample,
                PulseWindow {}
