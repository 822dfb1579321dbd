#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Objects written by pydicom are read by us; what we write is read by pydicom and dcmdump.

usage: dicom_check.py PROGRAM. Attributes as in DICOM PS3.3 C.8.25, identifiers of our own invention.
"""
import json
import os
import subprocess
import sys
import tempfile

import pydicom
from pydicom.dataset import Dataset, FileDataset, FileMetaDataset
from pydicom.sequence import Sequence
from pydicom.uid import ExplicitVRLittleEndian, ImplicitVRLittleEndian, generate_uid

program = sys.argv[1]
failures = 0
checks = 0


def check(good, words):
    global failures, checks
    checks += 1
    if not good:
        failures += 1
        print("FAILED", words)


def item(**values):
    made = Dataset()
    for name, value in values.items():
        setattr(made, name, value)
    return made


def eye(sphere, cylinder=None, axis=None, prism=None, add=None):
    made = item(SpherePower=sphere)
    if cylinder is not None:
        made.CylinderSequence = Sequence([item(CylinderPower=cylinder, CylinderAxis=axis)])
    if prism is not None:
        made.PrismSequence = Sequence([item(HorizontalPrismPower=prism[0], HorizontalPrismBase=prism[1],
                                            VerticalPrismPower=prism[2], VerticalPrismBase=prism[3])])
    if add is not None:
        made.AddNearSequence = Sequence([item(AddPower=add, ViewingDistance=400.0)])
    return made


def write(folder, name, number, modality, syntax=ExplicitVRLittleEndian, patient="K-1", **values):
    meta = FileMetaDataset()
    meta.MediaStorageSOPClassUID = "1.2.840.10008.5.1.4.1.1.78." + str(number)
    meta.MediaStorageSOPInstanceUID = generate_uid()
    meta.TransferSyntaxUID = syntax
    path = os.path.join(folder, name)
    data = FileDataset(path, {}, file_meta=meta, preamble=b"\0" * 128)
    data.SOPClassUID = meta.MediaStorageSOPClassUID
    data.SOPInstanceUID = meta.MediaStorageSOPInstanceUID
    data.StudyInstanceUID = generate_uid()
    data.SeriesInstanceUID = generate_uid()
    data.Modality = modality
    data.PatientID = patient
    data.PatientName = "Osric^of the quay"
    data.ContentDate = "20260301"
    data.ContentTime = "101500"
    data.InstanceNumber = "1"
    if "vertex" in values:  # younger than the dictionary of the library
        data.add_new(0x0022000F, "FD", values.pop("vertex"))
    for key, value in values.items():
        setattr(data, key, value)
    data.is_little_endian = True
    data.is_implicit_VR = syntax == ImplicitVRLittleEndian
    data.save_as(path, write_like_original=False)
    return path


def run(*words):
    return subprocess.run([program, *words], capture_output=True, text=True, check=False)


def cells(*files):
    ran = run("import", "--as", "dicom", "--json", *files)
    answer = json.loads(ran.stdout)
    return ran, answer["persons"][0]["cells"], answer


with tempfile.TemporaryDirectory() as folder:
    right = eye(-2.0, -1.25, 175.0, (1.0, "IN", 0.5, "DOWN"), 2.0)
    left = eye(-2.5, add=2.0)
    for syntax in (ExplicitVRLittleEndian, ImplicitVRLittleEndian):
        refraction = write(folder, "srf.dcm", 4, "SRF", syntax,
                           SubjectiveRefractionRightEyeSequence=Sequence([right]),
                           SubjectiveRefractionLeftEyeSequence=Sequence([left]),
                           DistancePupillaryDistance=62.5, NearPupillaryDistance=59.0)
        ran, row, _ = cells(refraction)
        check(ran.returncode == 0, ran.stderr)
        check(row.get("right") == "-2.00 -1.25 x 175 1.00 base in 0.50 base down", row)
        check(row.get("left") == "-2.50" and row.get("add_right") == "+2.00" and row.get("add_left") == "+2.00", row)
        check(row.get("pd_mm") == "62.5" and row.get("near_pd_mm") == "59", row)
        check(row.get("written_on") == "2026-03-01" and row.get("person") == "K-1", row)
        check("PatientName" in ran.stderr, "what is not used is told: " + ran.stderr)

    auto = write(folder, "ar.dcm", 2, "AR", AutorefractionRightEyeSequence=Sequence([eye(-2.12, -1.0, 172.0)]),
                 AutorefractionLeftEyeSequence=Sequence([eye(-2.5)]), vertex=12.0)
    lens = write(folder, "len.dcm", 1, "LEN", RightLensSequence=Sequence([eye(-1.75, add=1.5)]),
                 LeftLensSequence=Sequence([eye(-2.25, -0.5, 90.0, add=1.5)]))
    code = item(CodeValue="1", CodingSchemeDesignator="99TEST", CodeMeaning="Best corrected visual acuity")
    acuity = write(folder, "va.dcm", 5, "VA", ViewingDistanceType="DISTANCE",
                   VisualAcuityTypeCodeSequence=Sequence([code]),
                   VisualAcuityRightEyeSequence=Sequence([item(DecimalVisualAcuity=1.0)]),
                   VisualAcuityLeftEyeSequence=Sequence([item(DecimalVisualAcuity=0.8)]))
    ran, row, answer = cells(refraction, auto, lens, acuity)
    check(ran.returncode == 0 and len(answer["persons"]) == 1, ran.stderr)
    check(row.get("objective_right") == "-2.120 -1.00 x 172" and row.get("objective_left") == "-2.50", row)
    check(row.get("worn_right") == "-1.75" and row.get("worn_left") == "-2.25 -0.50 x 90", row)
    check(row.get("worn_add") == "+1.50" and row.get("vertex_mm") == "12", row)
    check(row.get("va_best_right") == "dec 1" and row.get("va_best_left") == "dec 0.8", row)

    ran, row, _ = cells(auto)
    check(row.get("source") == "objective" and row.get("right") == "-2.120 -1.00 x 172", row)
    check("dicom-no-refraction" in ran.stderr, ran.stderr)

    other = write(folder, "other.dcm", 3, "KER")
    check("dicom-class" in run("import", "--as", "dicom", other).stderr, "keratometry")
    for name, change in (("cyl", dict(CylinderSequence=Sequence([item(CylinderPower=-1.0)]))),
                         ("sphere", dict(SpherePower=-100.0)), ("nan", dict(SpherePower=float("nan")))):
        bad = eye(-1.0)
        for key, value in change.items():
            setattr(bad, key, value)
        path = write(folder, name + ".dcm", 4, "SRF", SubjectiveRefractionRightEyeSequence=Sequence([bad]),
                     SubjectiveRefractionLeftEyeSequence=Sequence([eye(-1.0)]))
        ran = run("import", "--as", "dicom", path)
        check(ran.returncode == 3 and "error" in ran.stderr, name + ": " + ran.stdout + ran.stderr)
    one = write(folder, "one.dcm", 4, "SRF", SubjectiveRefractionRightEyeSequence=Sequence([eye(-1.0)]))
    check("dicom-eye-missing" in run("import", "--as", "dicom", one).stderr, "one eye")

    table = os.path.join(folder, "people.csv")
    with open(table, "w", encoding="utf-8") as file:
        file.write("person,age,right,left,add,pd_mm,written_on\n"
                   "K-é,44,-1.25 -0.50 x 175 0.75 base out,+1.50 0.50 base up,2.00,62.5,2026-03-01\n")
    ours = os.path.join(folder, "ours.dcm")
    ran = run("export", "--as", "dicom", "--output", ours, table)
    check(ran.returncode == 0, ran.stderr)
    data = pydicom.dcmread(ours)
    check(data.SOPClassUID == "1.2.840.10008.5.1.4.1.1.78.4" and data.Modality == "SRF", data)
    check(data.PatientID == "K-é" and data.ContentDate == "20260301" and data.DistancePupillaryDistance == 62.5, data)
    first = data.SubjectiveRefractionRightEyeSequence[0]
    check(first.SpherePower == -1.25 and first.CylinderSequence[0].CylinderPower == -0.5, first)
    check(first.CylinderSequence[0].CylinderAxis == 175.0, first)
    check(first.PrismSequence[0].HorizontalPrismPower == 0.75, first)
    check(first.PrismSequence[0].HorizontalPrismBase == "OUT" and first.AddNearSequence[0].AddPower == 2.0, first)
    second = data.SubjectiveRefractionLeftEyeSequence[0]
    check(second.PrismSequence[0].VerticalPrismBase == "UP" and "CylinderSequence" not in second, second)
    check(data[0x0047, 0x0010].value == "QUARTERSTEP" and data[0x0047, 0x1001].value == "adult-distance", data)
    check(len(data.SOPInstanceUID) <= 64 and data.SOPInstanceUID.is_valid, data.SOPInstanceUID)
    dump = subprocess.run(["dcmdump", "--print-all", ours], capture_output=True, text=True, errors="replace", check=False)
    check(dump.returncode == 0 and not dump.stderr.strip(), dump.stderr)
    check("SubjectiveRefractionRightEyeSequence" in dump.stdout and "SpherePower" in dump.stdout, dump.stdout)
    ran, row, _ = cells(ours)
    check(row.get("right") == "-1.25 -0.50 x 175 0.75 base out" and row.get("age") == "44", row)

print(f"{checks - failures} passed, {failures} failed")
sys.exit(1 if failures else 0)
