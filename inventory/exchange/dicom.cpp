// SPDX-License-Identifier: GPL-3.0-or-later
#include "inventory/exchange/dicom.hpp"

#include "inventory/exchange/dicom_patient.hpp"

#include <algorithm>

namespace quarterstep
{

namespace
{

class DicomReader
{
  public:
    explicit DicomReader(const ImportOptions& options) : options_(options) {}

    ImportedRows read(const std::vector<NamedBytes>& files)
    {
        for (std::size_t i = 0; i < files.size(); ++i) {
            if (options_.progress)
                options_.progress(i, files.size());
            auto object = readDicomObject(files[i].bytes, files[i].name);
            reading_.findings.insert(reading_.findings.end(), object.findings.begin(), object.findings.end());
            if (object.usable())
                takeDicomObject(object.value, files[i].name, patientOf(object.value, files[i].name));
        }
        if (options_.progress)
            options_.progress(files.size(), files.size());
        if (!reading_.usable())
            return std::move(reading_);
        RowEnd end(options_);
        for (auto& patient : patients_) {
            settleDicomPatient(patient);
            end.finish(std::move(patient.record), patient.places, patient.row);
            reading_.value.push_back(std::move(patient.row));
        }
        return std::move(reading_);
    }

  private:
    DicomPatient& patientOf(const DicomObject& object, const std::string& file)
    {
        const auto found = std::find_if(patients_.begin(), patients_.end(), [&](const DicomPatient& each) {
            return each.record.person == object.patientId && !object.patientId.empty();
        });
        if (found != patients_.end())
            return *found;
        auto& patient = patients_.emplace_back();
        patient.record.person = object.patientId;
        patient.record.position = {file, 0, 0};
        if (!object.patientId.empty())
            patient.places["person"] = {file, 0, 0};
        return patient;
    }

    const ImportOptions& options_;
    std::vector<DicomPatient> patients_;
    ImportedRows reading_;
};

} // namespace

ImportedRows readDicom(const std::vector<NamedBytes>& files, const ImportOptions& options)
{
    return DicomReader(options).read(files);
}

} // namespace quarterstep
