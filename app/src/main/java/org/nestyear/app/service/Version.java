package org.nestyear.app.service;

/** The version of the program, the same as in the build file. */
public final class Version {
    public static final String NUMBER = "0.1.0";

    private Version() {}
}
